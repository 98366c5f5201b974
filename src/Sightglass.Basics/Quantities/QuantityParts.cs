using Sightglass.Basics.Diagnostics;

namespace Sightglass.Basics.Quantities;

/// <summary>A written value taken apart: its number and its unit, each with its place.</summary>
internal readonly struct QuantityParts
{
    private enum Flaw
    {
        None,
        NoNumber,
        TooLarge,
        ZeroBelow,
        CutUp,
    }

    private readonly double _value;
    private readonly Flaw _flaw;

    private QuantityParts(string text, Span whole, double value, Flaw flaw, string unit, Span unitSpan)
    {
        (Text, Whole, _value, _flaw, UnitText, UnitSpan) = (text, whole, value, flaw, unit, unitSpan);
    }

    /// <summary>As written, trimmed.</summary>
    public string Text { get; }

    public Span Whole { get; }

    /// <summary>The unit as written, spaces inside as one; empty where there is none.</summary>
    public string UnitText { get; }

    public Span UnitSpan { get; }

    public bool HasNumber => _flaw != Flaw.NoNumber;

    public static QuantityParts Read(string text, Span span)
    {
        int start = SkipSpace(text, 0);
        int end = text.Length;
        while (end > start && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }

        string trimmed = text[start..end];
        Span whole = span.Slice(text, start, end - start);
        int at = 0;
        (double value, Flaw flaw) = ReadNumber(trimmed, ref at);
        at = SkipSpace(trimmed, at);
        string unit = flaw == Flaw.NoNumber ? "" : OneSpaced(trimmed[at..]);
        return new(trimmed, whole, value, flaw, unit, whole.Slice(trimmed, at, trimmed.Length - at));
    }

    /// <summary>The unit, null where none is written. False where it is not known (reported).</summary>
    public bool TryUnit(Dimension? expected, DiagnosticList found, out Unit? unit)
    {
        unit = UnitText.Length == 0 ? null : UnitTable.Find(UnitText);
        if (UnitText.Length == 0 || unit is not null || _flaw is Flaw.CutUp)
        {
            return true;
        }

        QuantityMessages.UnknownUnit(found, UnitSpan, UnitText, expected);
        return false;
    }

    public bool TryNumber(string expected, DiagnosticList found, out double value)
    {
        value = _value;
        switch (_flaw)
        {
            case Flaw.NoNumber:
                QuantityMessages.NotANumber(found, Whole, Text, expected);
                return false;
            case Flaw.TooLarge:
                QuantityMessages.TooLarge(found, Whole, Text);
                return false;
            case Flaw.ZeroBelow:
                QuantityMessages.ZeroBelow(found, Whole, Text);
                return false;
            case Flaw.CutUp:
                QuantityMessages.CutUp(found, Whole, Text);
                return false;
            default:
                return true;
        }
    }

    private static (double Value, Flaw Flaw) ReadNumber(string text, ref int at)
    {
        bool negative = at < text.Length && text[at] is '-' or '\u2212';
        if (negative || (at < text.Length && text[at] == '+'))
        {
            at = SkipSpace(text, at + 1);
        }

        if (!NumberReader.StartsNumber(text, at))
        {
            return (0, Flaw.NoNumber);
        }

        int start = at;
        if (NumberReader.VulgarFraction(text[at]) is > 0 and double value)
        {
            at++;
            return (negative ? -value : value, Flaw.None);
        }

        NumberReader.TryReadDecimal(text, ref at, out value);
        bool fraction = NumberReader.TryReadFraction(text, ref at, text.AsSpan(start, at - start), ref value, out double below);
        Flaw flaw = fraction && below == 0 ? Flaw.ZeroBelow
            : !double.IsFinite(value) ? Flaw.TooLarge
            : IsCutUp(text, at) ? Flaw.CutUp
            : Flaw.None;
        return (negative ? -value : value, flaw);
    }

    /// <summary>A comma or a space, and digits again.</summary>
    private static bool IsCutUp(string text, int at)
    {
        bool gap = at < text.Length && (text[at] == ',' || char.IsWhiteSpace(text[at]));
        int next = gap ? SkipSpace(text, at + 1) : text.Length;
        return next < text.Length && char.IsAsciiDigit(text[next]);
    }

    private static int SkipSpace(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at;
    }

    private static string OneSpaced(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
