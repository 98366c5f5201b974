using System.Collections.Immutable;

namespace Sightglass.World.Snapshots;

/// <summary>How far a card has come; times in ticks.</summary>
public sealed record CardRunSnapshot(
    string? Program, ImmutableArray<StrandSnapshot> Strands, long RoundBegan, bool Judging, bool Noticing, int Step, long BeganAt,
    ImmutableArray<double> Written, ImmutableArray<int> Counters, Runs.OutcomeKind Ended, string Mechanism, long EndedAt)
{
    /// <summary>What people were asked to do, by number.</summary>
    public ImmutableArray<ErrandSnapshot> Errands { get; init; } = [];
}
