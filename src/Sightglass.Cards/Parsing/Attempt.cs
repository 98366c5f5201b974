using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>A sentence as one row of the table would read it.</summary>
/// <param name="Issues">How many gaps do not hold what they should: 0 is a sentence understood.</param>
/// <param name="Literals">Words of the pattern that stood there: the more, the likelier it was meant.</param>
/// <param name="Found">What to report if this reading is taken (names are reported when they are resolved).</param>
/// <param name="IsOpen">Whether its last gap is free text, to which all that follows in the step belongs.</param>
internal sealed record Attempt(Sentence Sentence, int Issues, int Literals, ImmutableArray<Diagnostic> Found, bool IsOpen)
{
    public bool IsBetterThan(Attempt? other) =>
        other is null || Issues < other.Issues || (Issues == other.Issues && Literals > other.Literals);
}
