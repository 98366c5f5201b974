namespace Sightglass.World.Records;

/// <summary>Where a live world starts: everything a replay needs besides the actions.</summary>
/// <param name="RoadNumber">Null for a book without road numbers.</param>
/// <param name="Situation">Null for the machine as built.</param>
/// <param name="Seed">Of the draws.</param>
/// <param name="Case">Of the draws.</param>
/// <param name="Drill">What is practised in it; null where the machine only runs.</param>
public sealed record SessionStart(string? RoadNumber, string? Situation, ulong Seed, ulong Case, string? Drill = null);
