namespace Sightglass.Training.Differences;

/// <summary>One thing that is not as it was.</summary>
/// <param name="What">The book's key: <c>positions</c>, <c>shows</c>.</param>
/// <param name="Was">Before, as people read it; empty where there was none.</param>
/// <param name="Is">After.</param>
public sealed record Change(string What, string Was, string Is);
