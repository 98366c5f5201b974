namespace Sightglass.World.Hauls;

/// <summary>How far it still gets before the machine that has least is down to its margin.</summary>
/// <param name="Unit">That machine.</param>
/// <param name="Margin">m³ that it keeps back.</param>
/// <param name="Metres">Further at what it burned for each metre of this run; 0 where the margin is reached.</param>
/// <param name="Standing">s that it could stand with the cars supplied instead.</param>
public sealed record HaulRange(int Unit, double Margin, double Metres, double Standing);
