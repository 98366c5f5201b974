using System.Text;
using System.Text.RegularExpressions;

namespace Sightglass.Architecture.Tests;

/// <summary>
/// What the messages of the code say, read from its text: for each code the literals that stand behind it in the same call, with <c>…</c> where a
/// value goes.
/// </summary>
internal static partial class MessageTexts
{
    /// <param name="Code">Such as <c>P004</c>.</param>
    /// <summary>Behind the code stand its place, what is wrong, what would be right.</summary>
    private const int FixArgument = 3;

    /// <param name="Wrong">What is wrong: the literals of the first argument that has some.</param>
    /// <param name="Right">What would be right, as far as the call says it in literals.</param>
    internal sealed record Row(string Code, string File, IReadOnlyList<string> Wrong, IReadOnlyList<string> Right);

    public static IReadOnlyList<Row> All { get; } = [.. RepositoryFiles.Code("src").Where(f => f.EndsWith(".cs", StringComparison.Ordinal)).SelectMany(InFile).OrderBy(r => r.Code, StringComparer.Ordinal)];

    private static IEnumerable<Row> InFile(string file)
    {
        string text = RepositoryFiles.Read(file);
        foreach (Match m in Code().Matches(text))
        {
            (int Argument, string Text)[] all = [.. Literals(text, m.Index + m.Length)];
            int first = all.Length == 0 ? 0 : all[0].Argument;
            first = first > FixArgument - 1 && all.All(l => l.Argument == first) ? -1 : first; // only what would be right is said here
            yield return new(m.Groups[1].Value, file, [.. all.Where(l => l.Argument == first).Select(l => l.Text)], [.. all.Where(l => l.Argument != first).Select(l => l.Text)]);
        }
    }

    /// <summary>String literals up to the end of the call or statement, with the number of the argument in which they stand.</summary>
    private static IEnumerable<(int Argument, string Text)> Literals(string text, int at)
    {
        int depth = 0;
        int argument = 0;
        while (at < text.Length && depth >= 0 && text[at] != ';')
        {
            char c = text[at];
            depth += c is '(' or '[' or '{' ? 1 : c is ')' or ']' or '}' ? -1 : 0;
            argument += depth == 0 && c == ',' ? 1 : 0;
            bool interpolated = c == '$' && at + 1 < text.Length && text[at + 1] == '"';
            if (interpolated || c == '"')
            {
                int start = at + (interpolated ? 2 : 1);
                (string literal, at) = Read(text, start, interpolated);
                if (depth == 0 && !Code().IsMatch($"\"{literal}\""))
                {
                    yield return (argument, literal);
                }

                continue;
            }

            at++;
        }
    }

    /// <summary>A literal from behind its opening quote: its text, and the place behind its closing quote.</summary>
    private static (string Literal, int End) Read(string text, int at, bool interpolated)
    {
        StringBuilder literal = new();
        while (text[at] != '"')
        {
            if (text[at] == '\\')
            {
                literal.Append(text[at + 1]);
                at += 2;
            }
            else if (interpolated && text[at] == '{' && text[at + 1] != '{')
            {
                at = Hole(text, at + 1);
                literal.Append('…');
            }
            else
            {
                at += interpolated && text[at] is '{' or '}' && text[at + 1] == text[at] ? 2 : 1;
                literal.Append(text[at - 1]);
            }
        }

        return (literal.ToString(), at + 1);
    }

    /// <summary>Behind the closing brace of a hole; a hole may hold literals of its own.</summary>
    private static int Hole(string text, int at)
    {
        for (int depth = 1; depth > 0;)
        {
            bool interpolated = text[at] == '$' && text[at + 1] == '"';
            if (interpolated || text[at] == '"')
            {
                (_, at) = Read(text, at + (interpolated ? 2 : 1), interpolated);
                continue;
            }

            depth += text[at] == '{' ? 1 : text[at] == '}' ? -1 : 0;
            at++;
        }

        return at;
    }

    [GeneratedRegex("\"([A-Z][0-9]{3})\"")]
    private static partial Regex Code();
}
