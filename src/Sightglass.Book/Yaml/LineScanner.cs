namespace Sightglass.Book.Yaml;

/// <summary>
/// Goes through a text line by line and knows, at every character, whether it stands in quotes, in brackets, in a comment or in a
/// block of text. Finds and mends what would lead the parser astray far from its cause: brackets and quotes that are never
/// closed, tabs, control characters.
/// </summary>
internal sealed partial class LineScanner(MendedText text, YamlLimits limits, Action<int, ScanFault> found)
{
    private readonly string _text = text.Source.Text;
    private readonly Stack<Opening> _open = new();
    private Opening? _quote;
    private bool _tokenStart;
    private int _contentEnd;
    private int _blockIndent = -1;
    private int _lineStart;
    private int _parent;
    private int _token;
    private int _faults;
    private bool _afterValue;
    private bool _sawKey;
    private LineShape _last;

    /// <summary>So much is wrong, or nested so deeply, that parsing makes no sense.</summary>
    public bool GaveUp { get; private set; }

    /// <summary>A bracket or quote, and the indentation that its continuation lines must exceed.</summary>
    private readonly record struct Opening(char Mark, int Offset, int Indent);

    public void Run()
    {
        int start = 0;
        while (start <= _text.Length && !GaveUp)
        {
            int end = _text.IndexOf('\n', start);
            end = end < 0 ? _text.Length : end;
            Line(start, end > start && _text[end - 1] == '\r' ? end - 1 : end);
            start = end + 1;
        }

        if (!GaveUp)
        {
            CloseAll(-1);
            CheckColon(default);
        }
    }

    private void Line(int start, int end)
    {
        int first = start;
        while (first < end && _text[first] == ' ')
        {
            first++;
        }

        if (first == end)
        {
            return;
        }

        if (_blockIndent >= 0 && first - start > _blockIndent)
        {
            ControlsIn(start, end);
            return;
        }

        _blockIndent = -1;
        int indent = first - start;
        first = Tabs(first, end);
        if (first == end || _text[first] == '#')
        {
            ControlsIn(first, end);
            return;
        }

        CloseAll(IsCloser(_text[first]) && _quote is null ? indent + 1 : indent);
        bool isContinued = _open.Count > 0 || _quote is not null;
        (_lineStart, _parent, _token, _tokenStart, _afterValue, _sawKey) = (start, indent, -1, true, false, false);
        Characters(first, end);
        CheckColon(isContinued ? default : Shape(first));
    }

    private void Characters(int first, int end)
    {
        bool endsInBlockMark = false;
        for (int i = first; i < end && !GaveUp; i++)
        {
            char c = _text[i];
            Control(i, c);
            if (_quote is { } q)
            {
                i = InQuotes(i, q.Mark, end);
                _contentEnd = i + 1;
                continue;
            }

            if (c == '#' && (i == first || _text[i - 1] is ' ' or '\t'))
            {
                ControlsIn(i + 1, end);
                break;
            }

            if (c is ' ' or '\t')
            {
                continue;
            }

            int next = _afterValue ? Misplaced(i, c, end) : i;
            if (next > i)
            {
                i = next - 1;
                continue;
            }

            endsInBlockMark = c is '|' or '>' ? _tokenStart : endsInBlockMark && c is '+' or '-' or (>= '1' and <= '9');
            _contentEnd = i + 1;
            Step(i, c, i + 1 >= end || _text[i + 1] is ' ' or '\t');
        }

        if (endsInBlockMark && _open.Count == 0 && _quote is null)
        {
            _blockIndent = _parent;
        }
    }

    private void Step(int i, char c, bool spaceFollows)
    {
        bool inFlow = _open.Count > 0;
        if (!inFlow && _tokenStart && c == '-' && spaceFollows)
        {
            (_parent, _token) = (i - _lineStart, -1);
            return;
        }

        if (_token < 0)
        {
            _token = i - _lineStart;
        }

        if (c == ':' && spaceFollows && !inFlow)
        {
            _parent = _token;
            _sawKey = true;
        }

        bool wasStart = _tokenStart;
        _tokenStart = (c is ':' && spaceFollows) || (wasStart && c is '?' && spaceFollows) || (inFlow && c == ',');
        if (c is '"' or '\'' && wasStart)
        {
            _quote = new(c, i, _parent);
        }
        else if (c is '[' or '{' && (wasStart || inFlow))
        {
            Open(c, i);
            _tokenStart = true;
        }
        else if (IsCloser(c) && inFlow)
        {
            Close(i, c);
            _afterValue = true;
        }
    }

    private int InQuotes(int i, char mark, int end)
    {
        char c = _text[i];
        if (c == '\\' && mark == '"')
        {
            return Math.Min(i + 1, end - 1);
        }

        if (c != mark)
        {
            return i;
        }

        if (mark == '\'' && i + 1 < end && _text[i + 1] == '\'')
        {
            return i + 1;
        }

        _quote = null;
        _tokenStart = false;
        _afterValue = true;
        return i;
    }

    private static bool IsCloser(char c) => c is ']' or '}';
}
