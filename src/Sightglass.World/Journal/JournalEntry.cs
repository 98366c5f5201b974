using Sightglass.Basics.Time;

namespace Sightglass.World.Journal;

/// <summary>One line of what happened, in plain words.</summary>
/// <param name="Time">Since the start.</param>
/// <param name="Kind">What sort; <see cref="JournalKind.Truth"/> is never shown to a trainee.</param>
/// <param name="Text">A sentence.</param>
/// <param name="Step">The card's step, or 0.</param>
public sealed record JournalEntry(SimTime Time, JournalKind Kind, string Text, int Step = 0);
