using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Parsing;

/// <summary>Cuts a card's text into lines and joins wrapped ones: a line that is indented and starts nothing goes on the line above.</summary>
internal static class LineSplitter
{
    private const int LongestNumber = 5;

    public static List<RawLine> Split(SourceText source, CardLanguage language)
    {
        List<RawLine> lines = [];
        string text = source.Text;
        int start = 0;
        while (start <= text.Length)
        {
            int end = text.IndexOf('\n', start);
            end = end < 0 ? text.Length : end;
            Add(lines, Classify(text, start, end, language), IsIndented(text, start, end));
            start = end + 1;
        }

        if (lines.Count > 0 && lines[^1] is { Kind: LineKind.Blank } && (text.Length == 0 || text[^1] == '\n'))
        {
            lines.RemoveAt(lines.Count - 1);
        }

        return lines;
    }

    private static void Add(List<RawLine> lines, RawLine line, bool indented)
    {
        bool goesOn = indented && line.Kind is LineKind.Other && lines.Count > 0 && lines[^1].Kind is not (LineKind.Blank or LineKind.Comment);
        if (goesOn)
        {
            lines[^1] = lines[^1] with { End = line.End };
        }
        else
        {
            lines.Add(line);
        }
    }

    private static bool IsIndented(string text, int start, int end) => start < end && text[start] is ' ' or '\t';

    private static RawLine Classify(string text, int start, int end, CardLanguage language)
    {
        while (end > start && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }

        int body = start;
        while (body < end && (char.IsWhiteSpace(text[body]) || text[body] == '\uFEFF'))
        {
            body++;
        }

        if (body == end)
        {
            return new(LineKind.Blank, start, end, end);
        }

        if (text.AsSpan(body, end - body).StartsWith(language.Small.Comment, StringComparison.Ordinal))
        {
            return new(LineKind.Comment, start, end, body);
        }

        return TryStep(text, start, body, end) ?? TryListItem(text, start, body, end)
            ?? new(IsLabelled(text, body, end, language) ? LineKind.Labelled : LineKind.Other, start, end, body);
    }

    private static RawLine? TryStep(string text, int start, int body, int end)
    {
        int at = body;
        while (at < end && at - body <= LongestNumber && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        bool marked = at > body && at - body <= LongestNumber && at < end && text[at] is '.' or ')';
        if (!marked || (at + 1 < end && !char.IsWhiteSpace(text[at + 1])))
        {
            return null;
        }

        int number = int.Parse(text.AsSpan(body, at - body), CultureInfo.InvariantCulture);
        return new(LineKind.Step, start, end, at + 1, number);
    }

    private static RawLine? TryListItem(string text, int start, int body, int end)
    {
        bool bullet = text[body] is '-' or '•' or '*' && body + 1 < end && char.IsWhiteSpace(text[body + 1]);
        bool lettered = body + 2 < end && char.IsAsciiLetterLower(text[body]) && text[body + 1] is '.' or ')' && char.IsWhiteSpace(text[body + 2]);
        return bullet ? new(LineKind.ListItem, start, end, body + 1) : lettered ? new(LineKind.ListItem, start, end, body + 2) : null;
    }

    private static bool IsLabelled(string text, int body, int end, CardLanguage language)
    {
        ImmutableArray<Word> words = language.WordsOf(text, body, Math.Min(end, body + 200));
        return language.Labels.Any(label => label.Length <= words.Length && label.Index().All(l => words[l.Index].Is(l.Item)));
    }
}
