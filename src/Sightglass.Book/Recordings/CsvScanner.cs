namespace Sightglass.Book.Recordings;

/// <summary>
/// Takes comma-separated text apart, row by row, by RFC 4180: fields may stand in quotes, a quote within them is doubled, and within them lines may end. Lines end in CR LF, LF or
/// CR. A quote within a field that does not begin with one stands for itself. No text is copied until it is asked for.
/// </summary>
/// <param name="text">The whole of it.</param>
/// <param name="separator">Comma, semicolon or tab.</param>
public sealed class CsvScanner(string text, char separator)
{
    /// <summary>Characters of one field.</summary>
    public const int MostCharacters = 10_000;

    /// <summary>Fields of one row.</summary>
    public const int MostFields = 2_000;

    private readonly List<CsvField> _fields = [];
    private int _at;

    /// <summary>Of the row that was read last.</summary>
    public IReadOnlyList<CsvField> Fields => _fields;

    /// <summary>Why nothing more was read; nothing after this place would be understood.</summary>
    public CsvFlaw Flaw { get; private set; }

    /// <summary>Where that is.</summary>
    public int FlawAt { get; private set; }

    /// <summary>Reads the next row, also an empty one. False at the end and at a flaw.</summary>
    public bool Next()
    {
        _fields.Clear();
        if (_at >= text.Length || Flaw != CsvFlaw.None)
        {
            return false;
        }

        while (Field())
        {
            if (_at >= text.Length || text[_at] != separator)
            {
                return EndLine();
            }

            _at++;
            if (_fields.Count >= MostFields)
            {
                return Stop(CsvFlaw.TooManyFields, _at);
            }
        }

        return false;
    }

    /// <summary>What a field says: without quotes and without white space at its ends.</summary>
    public string Text(CsvField field)
    {
        string raw = text[field.Start..field.End];
        return (field.IsQuoted ? raw.Replace("\"\"", "\"", StringComparison.Ordinal) : raw).Trim();
    }

    /// <summary>Whether the row has nothing in it.</summary>
    public bool IsBlank => _fields.TrueForAll(f => text.AsSpan(f.Start, f.End - f.Start).IsWhiteSpace());

    private bool Field() => _at < text.Length && text[_at] == '"' ? Quoted() : Plain();

    private bool Plain()
    {
        int start = _at;
        while (_at < text.Length && text[_at] != separator && text[_at] is not ('\n' or '\r'))
        {
            if (++_at - start > MostCharacters)
            {
                return Stop(CsvFlaw.TooLong, start);
            }
        }

        _fields.Add(new(start, _at, IsQuoted: false));
        return true;
    }

    private bool Quoted()
    {
        int start = ++_at;
        while (true)
        {
            int quote = text.AsSpan(_at).IndexOf('"');
            if (quote < 0 || _at + quote - start > MostCharacters)
            {
                return Stop(CsvFlaw.NotClosed, start - 1);
            }

            _at += quote + 1;
            if (_at < text.Length && text[_at] == '"')
            {
                _at++;
                continue;
            }

            break;
        }

        _fields.Add(new(start, _at - 1, IsQuoted: true));
        return _at >= text.Length || text[_at] == separator || text[_at] is '\n' or '\r' || Stop(CsvFlaw.AfterQuote, _at);
    }

    private bool EndLine()
    {
        if (_at < text.Length && text[_at] == '\r')
        {
            _at++;
        }

        if (_at < text.Length && text[_at] == '\n')
        {
            _at++;
        }

        return true;
    }

    private bool Stop(CsvFlaw flaw, int at)
    {
        (Flaw, FlawAt) = (flaw, at);
        _fields.Clear();
        return false;
    }
}
