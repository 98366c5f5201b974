namespace Sightglass.Drawing.Charts;

/// <summary>A vehicle of a train: from where to where, metres from its head.</summary>
/// <param name="IsLocomotive">Drawn solid.</param>
public sealed record TrainVehicle(string Name, double From, double To, bool IsLocomotive = false);
