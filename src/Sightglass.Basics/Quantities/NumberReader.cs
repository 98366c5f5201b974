using System.Globalization;

namespace Sightglass.Basics.Quantities;

/// <summary>
/// Reads numbers as people write them: <c>12</c>, <c>0.5</c>, <c>.5</c>, <c>2 000</c> (thin space), <c>1e-5</c>, <c>1/4</c>, <c>1 1/4</c>, <c>1¼</c>.
/// </summary>
internal static class NumberReader
{
    private const int LongestNumber = 400;

    /// <summary>Thin space and narrow no-break space: the only group separators.</summary>
    public static bool IsThinSpace(char c) => c is '\u2009' or '\u202F';

    public static bool StartsNumber(ReadOnlySpan<char> text, int at) =>
        at < text.Length && (char.IsAsciiDigit(text[at]) || VulgarFraction(text[at]) > 0 || (text[at] == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1])));

    /// <summary>Reads an unsigned decimal at <paramref name="at"/> and moves past it. Infinite when it is too large for a number.</summary>
    public static bool TryReadDecimal(ReadOnlySpan<char> text, ref int at, out double value)
    {
        Span<char> kept = stackalloc char[LongestNumber];
        int length = 0;
        int i = at;
        bool fits = CopyDigits(text, ref i, kept, ref length, grouped: true);
        if (i + 1 < text.Length && text[i] == '.' && char.IsAsciiDigit(text[i + 1]))
        {
            Put(kept, ref length, '.');
            i++;
            fits &= CopyDigits(text, ref i, kept, ref length, grouped: false);
        }

        CopyExponent(text, ref i, kept, ref length);
        bool read = i > at;
        value = double.PositiveInfinity;
        if (read && fits && length < LongestNumber)
        {
            value = double.Parse(kept[..length], NumberStyles.Float, CultureInfo.InvariantCulture);
        }

        at = i;
        return read;
    }

    /// <summary>Reads what follows a whole number in a fraction: <c>/4</c>, <c> 1/4</c> or <c>¼</c>.</summary>
    /// <param name="whole">The number read before, replaced by the whole fraction.</param>
    /// <param name="wholeText">Its text: only plain digits may start a fraction.</param>
    /// <param name="denominator">The number below the line, 1 where there is no fraction.</param>
    public static bool TryReadFraction(ReadOnlySpan<char> text, ref int at, ReadOnlySpan<char> wholeText, ref double whole, out double denominator)
    {
        denominator = 1;
        if (wholeText.ContainsAnyExceptInRange('0', '9'))
        {
            return false;
        }

        int i = at;
        if (i < text.Length && VulgarFraction(text[i]) is > 0 and double part)
        {
            whole += part;
            at = i + 1;
            return true;
        }

        double numerator = whole;
        bool mixed = i < text.Length && text[i] is ' ' or '\u00A0';
        if (mixed)
        {
            while (i < text.Length && text[i] is ' ' or '\u00A0')
            {
                i++;
            }

            if (!TryReadDigits(text, ref i, out numerator))
            {
                return false;
            }
        }

        if (i >= text.Length || text[i] is not ('/' or '\u2044') || !TryReadDigits(text, i + 1, out int end, out denominator))
        {
            denominator = 1;
            return false;
        }

        whole = mixed ? whole + (numerator / denominator) : numerator / denominator;
        at = end;
        return true;
    }

    /// <summary>The value of one character such as ¼, or 0.</summary>
    public static double VulgarFraction(char c) => c switch
    {
        '¼' => 0.25,
        '½' => 0.5,
        '¾' => 0.75,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => 0,
    };

    private static bool TryReadDigits(ReadOnlySpan<char> text, int start, out int end, out double value)
    {
        end = start;
        return TryReadDigits(text, ref end, out value);
    }

    private static bool TryReadDigits(ReadOnlySpan<char> text, ref int at, out double value)
    {
        value = 0;
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            value = (value * 10) + (text[at++] - '0');
        }

        return at > start;
    }

    private static bool CopyDigits(ReadOnlySpan<char> text, ref int i, Span<char> kept, ref int length, bool grouped)
    {
        bool fits = true;
        while (i < text.Length)
        {
            if (char.IsAsciiDigit(text[i]))
            {
                fits &= Put(kept, ref length, text[i++]);
            }
            else if (grouped && length > 0 && IsThinSpace(text[i]) && IsGroup(text, i + 1))
            {
                i++;
            }
            else
            {
                break;
            }
        }

        return fits;
    }

    /// <summary>Exactly three digits.</summary>
    private static bool IsGroup(ReadOnlySpan<char> text, int at)
    {
        if (at + 3 > text.Length || text.Slice(at, 3).ContainsAnyExceptInRange('0', '9'))
        {
            return false;
        }

        return at + 3 == text.Length || !char.IsAsciiDigit(text[at + 3]);
    }

    private static void CopyExponent(ReadOnlySpan<char> text, ref int i, Span<char> kept, ref int length)
    {
        int j = i + 1;
        if (length == 0 || i >= text.Length || text[i] is not ('e' or 'E'))
        {
            return;
        }

        bool negative = j < text.Length && text[j] is '-' or '\u2212';
        if (negative || (j < text.Length && text[j] == '+'))
        {
            j++;
        }

        if (j >= text.Length || !char.IsAsciiDigit(text[j]))
        {
            return;
        }

        Put(kept, ref length, 'e');
        Put(kept, ref length, negative ? '-' : '+');
        i = j;
        CopyDigits(text, ref i, kept, ref length, grouped: false);
    }

    private static bool Put(Span<char> kept, ref int length, char c)
    {
        if (length >= kept.Length)
        {
            return false;
        }

        kept[length++] = c;
        return true;
    }
}
