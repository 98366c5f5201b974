using System.Collections.Immutable;
using Sightglass.World.Journal;

namespace Sightglass.Training.Bets;

/// <summary>A bet that was run.</summary>
/// <param name="CameTrue">Which answer, from 0; −1 where none did.</param>
/// <param name="Held">Of each answer, whether its condition held at the end.</param>
/// <param name="FirstHeld">Of each answer, the second at which its condition was first seen to hold; null where it never was.</param>
/// <param name="Moments">What was shown, from the start to the end.</param>
/// <param name="Journal">What happened.</param>
/// <param name="Trouble">Why the numbers could not go on, or null.</param>
/// <param name="Hash">Of the trajectory.</param>
/// <param name="Steps">Of all networks.</param>
public sealed record BetResult(
    int CameTrue, ImmutableArray<bool> Held, ImmutableArray<double?> FirstHeld, ImmutableArray<BetMoment> Moments, ImmutableArray<JournalEntry> Journal, string? Trouble, ulong Hash, long Steps)
{
    /// <summary>What was shown last at or before a moment.</summary>
    public BetMoment At(double seconds) => Moments.Last(m => m.Seconds <= seconds || m == Moments[0]);
}
