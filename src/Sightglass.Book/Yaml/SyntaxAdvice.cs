using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Messages;

namespace Sightglass.Book.Yaml;

/// <summary>Says in plain words what is wrong with a text that is not YAML, and what would be right.</summary>
internal static class SyntaxAdvice
{
    private static readonly (string Marker, string Message, string Fix)[] s_known =
    [
        ("plain scalar value, found invalid mapping", "a second `: ` stands in this line, or the line is indented too far", "put quotes round a text that contains `: `, or give each key its own line in the column of the others"),
        ("multiline plain scalar, found invalid mapping", "a key stands below a text that was begun above", "begin the key in the column of the other keys"),
        ("cannot start any token", "this sign cannot begin a value", "put quotes round the text"),
        ("tab character", "a tab stands where spaces belong", "write spaces"),
        ("did not find expected key", "this does not fit to the keys around it", "give each key its own line in the column of the others"),
        ("did not find expected '-'", "this does not fit into the list around it", "begin each element with `- ` in the same column"),
        ("sequence entries are not allowed", "a list cannot begin here", "begin the list on a line of its own"),
        ("did not find expected ',' or", "a `,` is missing before this, or the text has a `: `", "separate the parts with `, `, and put quotes round a text that contains `: `"),
        ("node content", "a value is missing here", "write one, or take out the comma"),
        ("document start", "this does not belong to anything", "write `key: value` at the left margin"),
        ("wrong indentation", "the text goes on in a line that is not indented", "close the quotes, or indent the lines that belong to it"),
        ("unknown escape", "a `\\` in double quotes begins a sign that is not known", "write `\\\\`, or use single quotes"),
        ("block scalar", "text stands behind `|` or `>`", "put quotes round a text that begins so, or begin it on the next line"),
        ("directive", "`%` at the left margin begins a directive", "put quotes round the text"),
    ];

    public static Diagnostic For(ScanFault fault, SourceText source, int at)
    {
        Span span = source.Between(at, at + 1);
        return fault switch
        {
            ScanFault.Tab => BookMessages.Tab(span),
            ScanFault.Control => BookMessages.Control(span, source.Text[at]),
            ScanFault.NoColon => NoColon(source, at),
            ScanFault.AfterValue when Holes.In(source.Text[source.OffsetOf(span.Line, 1)..at]).LastOrDefault() is { } hole && !hole.Contains(':', StringComparison.Ordinal) => BookMessages.Syntax(
                span, $"the text goes on behind `{{{hole}}}`", "put quotes round a text that begins with a brace"),
            ScanFault.AfterValue => BookMessages.Syntax(
                span, $"`{source.Text[at]}` stands behind a closed quote or bracket", "match quotes and brackets, and begin a new key on a new line"),
            ScanFault.TooDeep => BookMessages.TooDeep(span, YamlLimits.Default.Depth),
            ScanFault.WrongCloser => BookMessages.NotClosed(span, $"`{source.Text[at]}` closes a bracket that was not opened", "match the brackets"),
            ScanFault.OpenDoubleQuote or ScanFault.OpenSingleQuote => BookMessages.NotClosed(
                span, $"the quote `{source.Text[at]}` is not closed", "close it on its line, or indent the lines that belong to it deeper"),
            _ => BookMessages.NotClosed(
                span, $"the bracket `{source.Text[at]}` is not closed", "close it, or indent the lines that belong to it deeper"),
        };
    }

    private static Diagnostic NoColon(SourceText source, int at)
    {
        string line = source.LineText(source.Locate(at).Line).Trim();
        int colon = line.IndexOf(':', StringComparison.Ordinal);
        string fix = colon > 0 && colon + 1 < line.Length ? "put a space after the colon" : "write `key: value`, or `name:` above deeper lines";
        return BookMessages.Syntax(source.Between(at, at + line.Length), "a colon with a space is missing in this line", fix);
    }

    public static Diagnostic For(Exception e, SourceText source, int at)
    {
        (_, string message, string fix) = s_known.FirstOrDefault(k => e.Message.Contains(k.Marker, StringComparison.OrdinalIgnoreCase));
        at = Math.Min(at, Math.Max(0, source.Text.TrimEnd().Length - 1));
        return BookMessages.Syntax(
            source.Between(at, at + 1), message ?? "this is not understood as YAML", fix ?? "check indentation, quotes, brackets and the space after each colon");
    }
}
