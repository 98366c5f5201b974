using Sightglass.Basics.Language;
using Sightglass.Basics.Time;

namespace Sightglass.World.Journal;

/// <summary>One line of what happened, in plain words. The sentence is kept unsaid, because people who read in different languages look at the same run.</summary>
/// <param name="Time">Since the start.</param>
/// <param name="Kind">What sort; <see cref="JournalKind.Truth"/> is never shown to a trainee.</param>
/// <param name="Sentence">With its gaps.</param>
/// <param name="Step">The card's step, or 0.</param>
/// <param name="Depth">0 for a step of the card itself, 1 for one of a card that it calls, and so on: told indented.</param>
public sealed record JournalEntry(SimTime Time, JournalKind Kind, FormattableString Sentence, int Step = 0, int Depth = 0)
{
    /// <summary>The sentence in the language that is spoken.</summary>
    public string Text => Say.Begin(Say.With(Sentence));
}
