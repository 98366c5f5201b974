using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>
/// What a person can find true by looking: indications, signs, positions of controls and numbers written down before.
/// Never a fact. Numbers are SI.
/// </summary>
public abstract record Condition
{
    private Condition()
    {
    }

    public required Span Span { get; init; }

    /// <summary>The instrument's reading compared with a number (SI; the unit is the one written, for showing).</summary>
    public sealed record Shows(Item Item, Comparison Comparison, double Value, Unit Unit) : Condition;

    /// <summary>The reading stands in the stretch of the scale that the book calls by this word (SI, both ends included).</summary>
    public sealed record ShowsWord(Item Item, string Word, double From, double To) : Condition;

    /// <summary>A control stands in a position, as seen from its place.</summary>
    public sealed record PositionIs(Item Item, string Position) : Condition;

    /// <summary>A lamp is lit, as seen from its place; otherwise it is dark.</summary>
    public sealed record Lit(Item Item) : Condition;

    /// <summary>Something is seen, heard or smelled.</summary>
    public sealed record SignHolds(Sign Sign) : Condition;

    /// <summary>A calculation with numbers read before, compared with a number (SI).</summary>
    public sealed record Compare(ReadingExpression Expression, Comparison Comparison, double Value, Unit Unit) : Condition;

    /// <summary>A number was read, and so has every other that a calculation needs.</summary>
    public sealed record Known(ReadingExpression Expression) : Condition;

    /// <summary>
    /// The case of the first item that is within reach from where the person stands; of the first item when none is. Only for names
    /// that the card's flow of places does not settle.
    /// </summary>
    public sealed record OneInReach(ImmutableArray<ReachCase> Cases) : Condition;

    public sealed record Not(Condition Inner) : Condition;

    public sealed record All(ImmutableArray<Condition> Parts) : Condition;

    public sealed record Any(ImmutableArray<Condition> Parts) : Condition;
}
