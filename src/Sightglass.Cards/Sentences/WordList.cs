using System.Collections.Immutable;
using System.Text;

namespace Sightglass.Cards.Sentences;

/// <summary>Splits text into words and marks, and joins them again.</summary>
public static class WordList
{
    private const string Trailing = ".,;:";

    public static ImmutableArray<Word> Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of(text, 0, text.Length);
    }

    /// <summary>Words of a stretch of a text; line ends inside count as spaces.</summary>
    public static ImmutableArray<Word> Of(string text, int start, int end)
    {
        ArgumentNullException.ThrowIfNull(text);
        ImmutableArray<Word>.Builder words = ImmutableArray.CreateBuilder<Word>();
        int at = start;
        while (at < end)
        {
            if (IsSpace(text[at]))
            {
                at++;
                continue;
            }

            int stop = at;
            while (stop < end && !IsSpace(text[stop]) && !EndsChunk(text, stop, at, end))
            {
                stop++;
            }

            AddChunk(words, text, at, stop);
            at = stop;
        }

        return words.ToImmutable();
    }

    /// <summary>Joined with one space, marks written on to the word before them.</summary>
    public static string Join(IEnumerable<Word> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        StringBuilder text = new();
        bool glue = true;
        bool quoted = false;
        foreach (Word word in words)
        {
            bool closes = word.Text == "\"" && quoted;
            if (!glue && !word.IsMark && !closes)
            {
                text.Append(' ');
            }

            text.Append(word.Text);
            glue = word.Text == "\"" && !quoted;
            quoted = word.Text == "\"" ? !quoted : quoted;
        }

        return text.ToString();
    }

    /// <summary>One space between words, no space at the ends.</summary>
    public static string Squeeze(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder squeezed = new();
        foreach (char c in text)
        {
            if (!IsSpace(c))
            {
                squeezed.Append(c);
            }
            else if (squeezed.Length > 0 && squeezed[^1] != ' ')
            {
                squeezed.Append(' ');
            }
        }

        return squeezed.ToString().TrimEnd(' ');
    }

    /// <summary>White space that separates words; thin spaces belong to a number.</summary>
    public static bool IsSpace(char c) => char.IsWhiteSpace(c) && c is not ('\u2009' or '\u202F');

    /// <summary>After a comma, colon or semicolon that a letter or a quote follows without a space.</summary>
    private static bool EndsChunk(string text, int at, int start, int end) =>
        at > start && at < end && (text[at - 1] is ',' or ';' or ':') && (char.IsLetter(text[at]) || IsQuote(text[at]));

    private static void AddChunk(ImmutableArray<Word>.Builder words, string text, int start, int end)
    {
        while (start < end && IsQuote(text[start]))
        {
            words.Add(new("\"", start, start + 1));
            start++;
        }

        int stop = end;
        while (stop > start && (Trailing.Contains(text[stop - 1], StringComparison.Ordinal) || IsQuote(text[stop - 1])))
        {
            stop--;
        }

        AddStem(words, text, start, stop);
        for (int i = stop; i < end; i++)
        {
            words.Add(new(IsQuote(text[i]) ? "\"" : text[i].ToString(), i, i + 1));
        }
    }

    private static void AddStem(ImmutableArray<Word>.Builder words, string text, int start, int stop)
    {
        bool owns = stop - start > 2 && IsApostrophe(text[stop - 2]) && (text[stop - 1] is 's' or 'S');
        int end = owns ? stop - 2 : stop;
        if (end > start)
        {
            words.Add(new(text[start..end].Replace('’', '\''), start, end));
        }

        if (owns)
        {
            words.Add(new("'s", end, stop));
        }
    }

    private static bool IsQuote(char c) => c is '"' or '“' or '”' or '„';

    private static bool IsApostrophe(char c) => c is '\'' or '’';
}
