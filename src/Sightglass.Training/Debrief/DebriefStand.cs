namespace Sightglass.Training.Debrief;

/// <summary>Where somebody was.</summary>
/// <param name="Role">Who.</param>
/// <param name="Place">Where they stood; on the way the place that they came from, or empty.</param>
/// <param name="Towards">Where the walk ends; null while standing.</param>
public sealed record DebriefStand(string Role, string Place, string? Towards);
