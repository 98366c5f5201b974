namespace Sightglass.Basics.Diagnostics;

/// <summary>One text that a person wrote, with the path to show in messages.</summary>
public sealed class SourceText
{
    private readonly int[] _lineStarts;

    public SourceText(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(text);
        Path = path;
        Text = text;
        List<int> starts = [0];
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n')
            {
                starts.Add(i + 1);
            }
        }

        _lineStarts = [.. starts];
        Origin = this;
    }

    private SourceText(SourceText seen) => (Path, Text, _lineStarts, Origin) = (seen.Path, seen.Text, seen._lineStarts, seen.Origin);

    /// <summary>The path as it is printed in messages, with forward slashes, relative to the book's folder where there is one.</summary>
    public string Path { get; }

    public string Text { get; }

    public int LineCount => _lineStarts.Length;

    /// <summary>The text itself, also of one that is seen from somewhere.</summary>
    public SourceText Origin { get; private init; }

    /// <summary>Where this text is used, for one that is read anew at each use; <see cref="Span.None"/> for the text itself.</summary>
    public Span SeenFrom { get; private init; }

    /// <summary>What the place of <see cref="SeenFrom"/> has to do with it, as in <c>for `aft` at</c>.</summary>
    public string SeenAs { get; private init; } = "";

    /// <summary>The same text with the same places, as it is seen from a place that uses it: findings about it name that place too.</summary>
    public SourceText SeenBy(string seenAs, Span from)
    {
        ArgumentNullException.ThrowIfNull(seenAs);
        return new(this) { SeenFrom = from, SeenAs = seenAs };
    }

    /// <summary>Line and column, both from 1, of a character offset (clamped to the text).</summary>
    public (int Line, int Column) Locate(int offset)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        int found = Array.BinarySearch(_lineStarts, offset);
        int line = found >= 0 ? found : ~found - 1;
        return (line + 1, offset - _lineStarts[line] + 1);
    }

    /// <summary>The offset of a line and column counted from 1 (clamped to the text).</summary>
    public int OffsetOf(int line, int column)
    {
        line = Math.Clamp(line, 1, _lineStarts.Length);
        return Math.Clamp(_lineStarts[line - 1] + Math.Max(column, 1) - 1, 0, Text.Length);
    }

    /// <summary>The text of a line counted from 1, without its line end.</summary>
    public string LineText(int line)
    {
        int start = OffsetOf(line, 1);
        int end = line < _lineStarts.Length ? _lineStarts[line] : Text.Length;
        return Text[start..end].TrimEnd('\n', '\r');
    }

    /// <summary>The span from one offset to another.</summary>
    public Span Between(int start, int end) => new(this, start, Math.Max(0, end - start));
}
