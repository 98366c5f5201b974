using System.Text;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Yaml;

/// <summary>
/// A source text with small mendings so that reading can go on after an error; places in it are led back to the author's text.
/// </summary>
internal sealed class MendedText(SourceText source)
{
    private readonly char[] _chars = source.Text.ToCharArray();
    private readonly SortedDictionary<int, string> _inserted = [];

    public SourceText Source => source;

    /// <summary>The mended text.</summary>
    public string Build()
    {
        if (_inserted.Count == 0)
        {
            return new string(_chars);
        }

        StringBuilder text = new(_chars.Length + 16);
        int from = 0;
        foreach ((int at, string piece) in _inserted)
        {
            text.Append(_chars, from, at - from).Append(piece);
            from = at;
        }

        return text.Append(_chars, from, _chars.Length - from).ToString();
    }

    /// <summary>The offset in the author's text that an offset in the mended text came from.</summary>
    public int ToOriginal(long mended)
    {
        if (_inserted.Count == 0)
        {
            return (int)Math.Clamp(mended, 0, source.Text.Length);
        }

        long shift = 0;
        foreach ((int at, string piece) in _inserted)
        {
            if (mended < at + shift)
            {
                break;
            }

            if (mended < at + shift + piece.Length)
            {
                return at;
            }

            shift += piece.Length;
        }

        return (int)Math.Clamp(mended - shift, 0, source.Text.Length);
    }

    /// <summary>The span in the author's text of two offsets in the mended text.</summary>
    public Span Span(long start, long end) => source.Between(ToOriginal(start), ToOriginal(end));

    /// <summary>Puts a piece before the character at an offset of the author's text, after pieces already put there.</summary>
    public void Insert(int original, char piece) =>
        _inserted[original] = _inserted.GetValueOrDefault(original, "") + piece;

    /// <summary>Writes a blank over one character.</summary>
    public void Blank(int original) => _chars[original] = ' ';

    /// <summary>Writes one character over another.</summary>
    public void Replace(int original, char c) => _chars[original] = c;

    /// <summary>Writes blanks over a line (from 1) and the deeper lines that hang on it.</summary>
    /// <returns>The line after them, or 0 when there was nothing left to take out.</returns>
    public int BlankBlock(int line)
    {
        int indent = Indent(line);
        if (indent < 0)
        {
            return 0;
        }

        BlankLine(line);
        int next = line + 1;
        for (; next <= source.LineCount; next++)
        {
            int deeper = Indent(next);
            if (deeper >= 0 && deeper <= indent)
            {
                break;
            }

            BlankLine(next);
        }

        return next;
    }

    private int Indent(int line)
    {
        (int start, int end) = Bounds(line);
        for (int i = start; i < end; i++)
        {
            if (_chars[i] is not (' ' or '\r'))
            {
                return i - start;
            }
        }

        return -1;
    }

    private void BlankLine(int line)
    {
        (int start, int end) = Bounds(line);
        _chars.AsSpan(start, end - start).Fill(' ');
        foreach (int at in _inserted.Keys.Where(k => k >= start && k <= end).ToList())
        {
            _inserted.Remove(at);
        }
    }

    private (int Start, int End) Bounds(int line)
    {
        int start = source.OffsetOf(line, 1);
        int end = line < source.LineCount ? source.OffsetOf(line + 1, 1) - 1 : _chars.Length;
        return (start, end);
    }
}
