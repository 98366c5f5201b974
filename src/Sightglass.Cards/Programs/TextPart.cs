using Sightglass.Basics.Quantities;

namespace Sightglass.Cards.Programs;

/// <summary>A piece of what is said.</summary>
public abstract record TextPart
{
    private TextPart()
    {
    }

    public sealed record Words(string Text) : TextPart;

    /// <summary>A number written down, or a calculation with some, said in a unit with the digits of the instrument (SI step, or null).</summary>
    public sealed record Value(ReadingExpression Expression, Unit Unit, double? Resolution) : TextPart;
}
