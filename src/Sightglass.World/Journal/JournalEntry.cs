using Sightglass.Basics.Time;

namespace Sightglass.World.Journal;

/// <summary>One line of what happened, in plain words.</summary>
/// <param name="Time">Since the start.</param>
/// <param name="Kind">What sort; <see cref="JournalKind.Truth"/> is never shown to a trainee.</param>
/// <param name="Text">A sentence.</param>
/// <param name="Step">The card's step, or 0.</param>
/// <param name="Depth">0 for a step of the card itself, 1 for one of a card that it calls, and so on: told indented.</param>
public sealed record JournalEntry(SimTime Time, JournalKind Kind, string Text, int Step = 0, int Depth = 0);
