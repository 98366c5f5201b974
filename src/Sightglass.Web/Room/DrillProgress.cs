namespace Sightglass.Web.Room;

/// <summary>How far an objective has come, by what has to be so at once.</summary>
/// <param name="AtStart">So at the start.</param>
/// <param name="Now">So now.</param>
/// <param name="Of">In all.</param>
public readonly record struct DrillProgress(int AtStart, int Now, int Of);
