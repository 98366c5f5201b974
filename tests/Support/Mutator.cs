using System.Text.RegularExpressions;

namespace Sightglass.Tests.Support;

/// <summary>Changes one token of a text: left out, doubled, swapped with the next, put in the place of another, or one character of it mistyped.</summary>
internal sealed partial class Mutator(string text, int seed)
{
    private readonly Random _random = new(seed);
    private readonly Match[] _tokens = [.. Token().Matches(text).Where(m => !IsComment(text, m.Index))];

    /// <summary>How many there are.</summary>
    public int Tokens => _tokens.Length;

    public Mutant Next()
    {
        while (true)
        {
            int i = _random.Next(_tokens.Length - 1);
            Match t = _tokens[i];
            (string what, int length, string put) = _random.Next(5) switch
            {
                0 => ("leave out", t.Length, ""),
                1 => ("double", t.Length, t.Value + t.Value),
                2 => Swap(t, _tokens[i + 1]),
                3 => ("replace by another", t.Length, _tokens[_random.Next(_tokens.Length)].Value),
                _ => ("mistype", t.Length, Mistype(t.Value)),
            };
            string mutated = text[..t.Index] + put + text[(t.Index + length)..];
            if (mutated != text)
            {
                int line = text.AsSpan(0, t.Index).Count('\n') + 1;
                string shown = text.Substring(t.Index, length).ReplaceLineEndings("⏎");
                return new(mutated, line, line + Math.Max(put.Count(c => c == '\n'), text.AsSpan(t.Index, length).Count('\n')), $"{what} «{shown}» → «{put.ReplaceLineEndings("⏎")}»");
            }
        }
    }

    private (string What, int Length, string Put) Swap(Match a, Match b) =>
        ("swap", b.Index + b.Length - a.Index, b.Value + text[(a.Index + a.Length)..b.Index] + a.Value);

    private string Mistype(string token)
    {
        int at = _random.Next(token.Length);
        char other = token[at] switch
        {
            '\n' => ' ',
            >= '0' and <= '9' and var d => (char)('0' + ((d - '0' + 1 + _random.Next(9)) % 10)),
            var c => (char)('a' + ((c + _random.Next(25)) % 26)),
        };
        return token[..at] + other + token[(at + 1)..];
    }

    private static bool IsComment(string text, int index)
    {
        int start = text.LastIndexOf('\n', Math.Max(0, index - 1)) + 1;
        int end = text.IndexOf('\n', start);
        return text.AsSpan(start, (end < 0 ? text.Length : end) - start).TrimStart().StartsWith("#");
    }

    /// <summary>Words, numbers, single signs, and line breaks with the indentation that follows.</summary>
    [GeneratedRegex(@"\n *|\p{L}+|\d+(?:\.\d+)?|[^\s\p{L}\d]")]
    private static partial Regex Token();
}
