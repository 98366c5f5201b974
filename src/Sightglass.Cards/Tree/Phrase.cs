using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Tree;

/// <summary>Words that name something, as written but with single spaces.</summary>
public sealed record Phrase(string Text, Span Span)
{
    public ImmutableArray<Word> Words => WordList.Of(Text);

    public override string ToString() => Text;
}
