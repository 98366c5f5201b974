using System.Collections.Immutable;

namespace Sightglass.World.Snapshots;

/// <summary>How far a card has come; times in ticks.</summary>
public sealed record CardRunSnapshot(
    string? Program, int Next, bool Halfway, int Actor, long RoundBegan, bool Judging, bool Noticing, string HeldFrom, int Step, long BeganAt,
    ImmutableArray<double> Written, ImmutableArray<int> Counters, Runs.OutcomeKind Ended, string Mechanism, long EndedAt);
