using System.Buffers;
using System.Globalization;
using System.Text;

namespace Sightglass.Book.Changes;

/// <summary>Writes a text as YAML so that it is read back letter by letter, in the style in which the author wrote the one before it where that style can hold it.</summary>
internal static class ScalarText
{
    private const int Width = 150;
    private const int LongestLine = 110;
    private static readonly SearchValues<char> s_marks = SearchValues.Create(",[]{}:\"'");

    public static ScalarStyle StyleOf(string written) => written.Length == 0 ? ScalarStyle.Plain : written[0] switch
    {
        '\'' => ScalarStyle.Single,
        '"' => ScalarStyle.Double,
        '>' or '|' => ScalarStyle.Block,
        _ => ScalarStyle.Plain,
    };

    /// <param name="text">What is to be read.</param>
    /// <param name="style">As it should be written.</param>
    /// <param name="flow">Whether it stands between braces or brackets.</param>
    /// <param name="indent">Blanks before the lines of a block.</param>
    public static string Write(string text, ScalarStyle style, bool flow, int indent)
    {
        bool isLong = text.Length > LongestLine;
        if (!flow && (style == ScalarStyle.Block || (style == ScalarStyle.Plain && isLong)) && CanBeFolded(text))
        {
            return Folded(text, indent);
        }

        return style == ScalarStyle.Plain && CanBePlain(text, flow) ? text
            : style == ScalarStyle.Single && IsPrintable(text) ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'"
            : Quoted(text);
    }

    /// <summary>Narrower than YAML's own rules, on which readers differ: begins with a letter or digit, no mark that could mean something.</summary>
    private static bool CanBePlain(string text, bool flow) =>
        text.Length > 0 && IsPrintable(text) && char.IsLetterOrDigit(text[0]) && text is not "null"
        && !text.EndsWith(':') && !text.EndsWith(' ')
        && !text.Contains(": ", StringComparison.Ordinal) && !text.Contains(" #", StringComparison.Ordinal)
        && !(flow && text.AsSpan().IndexOfAny(s_marks) >= 0);

    private static bool CanBeFolded(string text) =>
        text.Length > 0 && IsPrintable(text) && text[0] != ' ' && !text.EndsWith(' ') && !text.Contains("  ", StringComparison.Ordinal);

    private static bool IsPrintable(string text) => !text.Any(MustBeEscaped) && !text.Any(char.IsSurrogate);

    private static bool MustBeEscaped(char c) => c is '\uFEFF' || CharUnicodeInfo.GetUnicodeCategory(c)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned || (c != ' ' && char.IsWhiteSpace(c));

    private static string Folded(string text, int indent)
    {
        StringBuilder block = new(">-");
        int column = Width;
        foreach (string word in text.Split(' '))
        {
            bool begins = column + 1 + word.Length > Width;
            column = begins ? indent + word.Length : column + 1 + word.Length;
            _ = begins ? block.Append('\n').Append(' ', indent) : block.Append(' ');
            block.Append(word);
        }

        return block.ToString();
    }

    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (char c in text)
        {
            _ = c switch
            {
                '"' or '\\' => quoted.Append('\\').Append(c),
                '\n' => quoted.Append("\\n"),
                '\t' => quoted.Append("\\t"),
                _ when MustBeEscaped(c) => quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}"),
                _ => quoted.Append(c),
            };
        }

        return quoted.Append('"').ToString();
    }
}
