using System.Collections.Immutable;

namespace Sightglass.Paper.Papers;

/// <summary>What a debrief's sheet says beside what the run itself tells.</summary>
/// <param name="Trainee">Whom it is about; empty where nobody's name is known.</param>
/// <param name="Drill">The number of the drill in its room.</param>
/// <param name="Record">Name of the record's file.</param>
/// <param name="Day">When it was worked.</param>
/// <param name="Seed">Of the draws.</param>
/// <param name="Case">Of the draws.</param>
public sealed record DebriefFacts(string Trainee, int Drill, string Record, DateOnly Day, ulong Seed, ulong Case)
{
    /// <summary>What an assessor saw of each item to observe, as said: the item and the word on it.</summary>
    public ImmutableArray<(string Item, string Saw)> Observed { get; init; } = [];

    /// <summary>Advice, which does not count.</summary>
    public ImmutableArray<string> Coached { get; init; } = [];

    /// <summary>How far two assessors agree, as a sentence; empty where there are no two.</summary>
    public string Agreement { get; init; } = "";
}
