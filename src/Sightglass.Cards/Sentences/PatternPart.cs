using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>A piece of a sentence pattern.</summary>
public abstract record PatternPart
{
    private PatternPart()
    {
    }

    /// <summary>A word or mark that stands there as it is.</summary>
    public sealed record Literal(string Text) : PatternPart;

    /// <summary>A gap.</summary>
    public sealed record Slot(string Name, SlotKind Kind) : PatternPart;

    /// <summary>Parts that may be left out together.</summary>
    public sealed record Optional(ImmutableArray<PatternPart> Parts) : PatternPart;
}
