namespace Sightglass.Book.Yaml;

/// <content>Lines that lack their colon, and what stands behind a closed quote or bracket.</content>
internal sealed partial class LineScanner
{
    /// <summary>What a line looks like, as far as a missing colon goes.</summary>
    /// <param name="Start">Offset of its first sign; 0 length for a line that does not matter.</param>
    /// <param name="End">Offset behind its content.</param>
    /// <param name="Column">Column of its first word behind dashes, from 0.</param>
    /// <param name="IsBare">A text without a colon.</param>
    /// <param name="FollowsKey">The line before has a key in the same column.</param>
    private readonly record struct LineShape(int Start, int End, int Column, bool HasKey, bool IsDash, bool IsBare, bool FollowsKey);

    private LineShape Shape(int first)
    {
        bool isMark = _text.AsSpan(first).StartsWith("---") || _text.AsSpan(first).StartsWith("...") || _text[first] == '%';
        if (isMark || _token < 0)
        {
            return default;
        }

        bool isWord = char.IsLetterOrDigit(_text[_lineStart + _token]) || _text[_lineStart + _token] is '"' or '\'';
        bool isBare = !_sawKey && isWord && _open.Count == 0 && _quote is null && _blockIndent < 0;
        bool follows = _last.HasKey && _last.Column == _token;
        return new(first, _contentEnd, _token, _sawKey, first - _lineStart < _token, isBare, follows);
    }

    /// <summary>
    /// Reports a text in the place of a key: one that stands under a key in the same column, or above keys in the same column or deeper.
    /// No YAML text can go on like that.
    /// </summary>
    private void CheckColon(LineShape line)
    {
        LineShape last = _last;
        _last = line;
        bool keyBelow = line.HasKey && line.Column >= last.Column && !(line.IsDash && line.Column == last.Column);
        bool listBelow = line.IsDash && line.Column > last.Column && last.FollowsKey;
        if (last.IsBare && !GaveUp && (keyBelow || listBelow || (last.FollowsKey && !last.IsDash)))
        {
            Report(last.Start, ScanFault.NoColon);
            text.Insert(last.End, ':');
        }
    }

    /// <summary>
    /// Behind a closed quote or bracket only a colon, a comma or a closing bracket may stand. Reports and takes out anything else.
    /// </summary>
    /// <returns>Where to go on; <paramref name="at"/> itself when nothing is wrong.</returns>
    private int Misplaced(int at, char c, int end)
    {
        _afterValue = false;
        bool inFlow = _open.Count > 0;
        if (c == ':' || (inFlow && (c == ',' || IsCloser(c))))
        {
            return at;
        }

        Report(at, ScanFault.AfterValue);
        int to = at;
        while (to < end && !(inFlow && (_text[to] == ',' || IsCloser(_text[to]))))
        {
            text.Blank(to++);
        }

        return to;
    }
}
