using Sightglass.Basics.Diagnostics;

namespace Sightglass.Basics.Quantities;

/// <summary>Reads ranges: <c>40 % .. 90 %</c>, <c>40 .. 90 %</c> (the unit of the second serves both), <c>-1 % … 1 %</c>.</summary>
public static class QuantityRangeText
{
    /// <summary>True where the text has the two dots of a range.</summary>
    public static bool LooksLikeRange(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Dots(text, out _) >= 0;
    }

    /// <summary>Reads a range of the expected dimension; findings Q001…Q009.</summary>
    public static bool TryParse(
        string text, Span span, Dimension expected, DiagnosticList found, out QuantityRange range, PressureBasis basis = PressureBasis.Either)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(found);
        range = default;
        int dots = Dots(text, out int length);
        if (dots < 0)
        {
            QuantityMessages.NotARange(found, span, text, DimensionNames.WithExample(expected));
            return false;
        }

        string right = text[(dots + length)..];
        string left = WithUnitOf(text[..dots], right);
        Span leftSpan = span.Slice(text, 0, dots);
        Span rightSpan = span.Slice(text, dots + length, right.Length);
        bool reads = QuantityText.TryParse(left, leftSpan, expected, found, out Quantity from, basis);
        reads &= QuantityText.TryParse(right, rightSpan, expected, found, out Quantity to, basis);
        return reads && Ordered(text, span, from, to, found, out range);
    }

    /// <summary>Reads a range, or a single value as a range of no width.</summary>
    public static bool TryParseValueOrRange(
        string text, Span span, Dimension expected, DiagnosticList found, out QuantityRange range, PressureBasis basis = PressureBasis.Either)
    {
        if (LooksLikeRange(text))
        {
            return TryParse(text, span, expected, found, out range, basis);
        }

        bool reads = QuantityText.TryParse(text, span, expected, found, out Quantity value, basis);
        range = reads ? new(value.Si, value.Si, value.Unit) : default;
        return reads;
    }

    private static bool Ordered(string text, Span span, Quantity from, Quantity to, DiagnosticList found, out QuantityRange range)
    {
        range = new(from.Si, to.Si, to.Unit);
        if (from.Si <= to.Si)
        {
            return true;
        }

        QuantityMessages.WrongOrder(found, span, text);
        return false;
    }

    private static string WithUnitOf(string left, string right)
    {
        QuantityParts parts = QuantityParts.Read(left, Span.None);
        string unit = QuantityParts.Read(right, Span.None).UnitText;
        return parts.HasNumber && parts.UnitText.Length == 0 && unit.Length > 0 ? $"{left.TrimEnd()} {unit}" : left;
    }

    private static int Dots(string text, out int length)
    {
        int two = text.IndexOf("..", StringComparison.Ordinal);
        int one = text.IndexOf('…', StringComparison.Ordinal);
        length = two >= 0 ? 2 : 1;
        return two >= 0 ? two : one;
    }
}
