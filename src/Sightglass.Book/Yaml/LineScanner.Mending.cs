using System.Globalization;

namespace Sightglass.Book.Yaml;

/// <content>What is reported, and how the text is mended so that reading can go on.</content>
internal sealed partial class LineScanner
{
    private void Report(int at, ScanFault fault)
    {
        if (!GaveUp)
        {
            found(at, fault);
            GaveUp = ++_faults > limits.Mendings || fault == ScanFault.TooDeep;
        }
    }

    private void Open(char mark, int at)
    {
        _open.Push(new(mark, at, _parent));
        if (_open.Count > limits.Depth)
        {
            Report(at, ScanFault.TooDeep);
        }
    }

    private void Close(int at, char closer)
    {
        char opener = closer == ']' ? '[' : '{';
        if (_open.Peek().Mark == opener)
        {
            _open.Pop();
        }
        else if (_open.Any(o => o.Mark == opener))
        {
            while (_open.Peek().Mark != opener)
            {
                NotClosed(_open.Pop(), at);
            }

            _open.Pop();
        }
        else
        {
            Report(at, ScanFault.WrongCloser);
            text.Replace(at, CloserOf(_open.Pop().Mark));
        }
    }

    /// <summary>Ends every bracket or quote that a line at this indentation can no longer belong to.</summary>
    private void CloseAll(int indent)
    {
        if (_quote is { } q && indent <= q.Indent)
        {
            CloseQuote(q);
        }

        while (_quote is null && _open.TryPeek(out Opening o) && indent <= o.Indent)
        {
            NotClosed(_open.Pop(), _contentEnd);
        }
    }

    private void NotClosed(Opening o, int closeAt)
    {
        Report(o.Offset, o.Mark == '[' ? ScanFault.OpenBracket : ScanFault.OpenBrace);
        text.Insert(closeAt, CloserOf(o.Mark));
    }

    /// <summary>Closes a quote at the end of its line, before the brackets that end there.</summary>
    private void CloseQuote(Opening quote)
    {
        Report(quote.Offset, quote.Mark == '"' ? ScanFault.OpenDoubleQuote : ScanFault.OpenSingleQuote);
        int end = EndOfLine(quote.Offset);
        int at = ClosersBefore(end, quote.Offset);
        text.Insert(at, quote.Mark);
        _quote = null;
        for (int i = at; i < end && _open.Count > 0; i++)
        {
            if (IsCloser(_text[i]))
            {
                Close(i, _text[i]);
            }
        }
    }

    /// <summary>Where the closing brackets at the end of a line begin, as far as brackets are open.</summary>
    private int ClosersBefore(int end, int notBefore)
    {
        int at = end;
        int closers = 0;
        for (int i = end - 1; i > notBefore && (IsCloser(_text[i]) || _text[i] == ' '); i--)
        {
            closers += IsCloser(_text[i]) ? 1 : 0;
            if (closers > _open.Count)
            {
                break;
            }

            at = i;
        }

        return at;
    }

    private int EndOfLine(int offset)
    {
        int end = _text.IndexOf('\n', offset);
        end = end < 0 ? _text.Length : end;
        while (end > offset + 1 && char.IsWhiteSpace(_text[end - 1]))
        {
            end--;
        }

        return end;
    }

    private int Tabs(int first, int end)
    {
        bool reported = false;
        while (first < end && _text[first] is ' ' or '\t')
        {
            if (_text[first] == '\t')
            {
                if (!reported)
                {
                    Report(first, ScanFault.Tab);
                }

                reported = true;
                text.Blank(first);
            }

            first++;
        }

        return first;
    }

    private void ControlsIn(int start, int end)
    {
        for (int i = start; i < end && !GaveUp; i++)
        {
            Control(i, _text[i]);
        }
    }

    private void Control(int i, char c)
    {
        if ((char.IsControl(c) && c is not '\t') || c is '\u2028' or '\u2029' || (c > 0x7F && char.GetUnicodeCategory(c) == UnicodeCategory.Format) || (char.IsSurrogate(c) && !IsPair(i)))
        {
            Report(i, ScanFault.Control);
            text.Blank(i);
        }
    }

    private bool IsPair(int i) =>
        (char.IsHighSurrogate(_text[i]) && i + 1 < _text.Length && char.IsLowSurrogate(_text[i + 1]))
        || (char.IsLowSurrogate(_text[i]) && i > 0 && char.IsHighSurrogate(_text[i - 1]));

    private static char CloserOf(char opener) => opener == '[' ? ']' : '}';
}
