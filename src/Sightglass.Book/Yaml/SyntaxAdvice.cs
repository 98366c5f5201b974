using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;

namespace Sightglass.Book.Yaml;

/// <summary>Says in plain words what is wrong with a text that is not YAML, and what would be right.</summary>
internal static class SyntaxAdvice
{
    private static readonly (string Marker, string Message, string Fix)[] s_known =
    [
        ("mapping values are not allowed", "a second `: ` stands here where a single value was begun", "put quotes round a text that contains `: `, or indent the key under its parent"),
        ("found character that cannot start any token", "this character cannot begin a value", "put quotes round the text"),
        ("could not find expected ':'", "a key has no colon", "write `key: value`"),
        ("did not find expected key", "this does not fit into the keys around it", "check the indentation and the quotes of this line and the one above"),
        ("did not find expected '-'", "this does not fit into the list around it", "begin each element with `- ` at the same indentation"),
        ("block sequence entries are not allowed", "a list cannot begin here", "begin the list on a line of its own"),
        ("did not find expected ',' or", "a `,` or a closing bracket is missing", "separate the parts with `, `"),
        ("document start", "this does not belong to anything", "write `key: value` at the left margin"),
        ("wrong indentation", "the text goes on in a line that is not indented", "close the quotes, or indent the lines that belong to it"),
        ("escape", "a `\\` in double quotes begins an escape that is not known", "write `\\\\`, or use single quotes"),
        ("alias", "`*` begins a reference to another place of the file, which books do not use", "put quotes round the text"),
        ("directive", "`%` at the left margin begins a directive", "indent the line or put quotes round the text"),
    ];

    public static Diagnostic For(ScanFault fault, SourceText source, int at)
    {
        Span span = source.Between(at, at + 1);
        return fault switch
        {
            ScanFault.Tab => BookMessages.Tab(span),
            ScanFault.Control => BookMessages.Control(span, source.Text[at]),
            ScanFault.TooDeep => BookMessages.TooDeep(span, YamlLimits.Default.Depth),
            ScanFault.WrongCloser => BookMessages.NotClosed(span, $"`{source.Text[at]}` closes a bracket that was not opened", "match the brackets"),
            ScanFault.OpenDoubleQuote or ScanFault.OpenSingleQuote => BookMessages.NotClosed(
                span, $"the quote `{source.Text[at]}` is not closed", "close it on its line, or indent the lines that belong to it deeper"),
            _ => BookMessages.NotClosed(
                span, $"the bracket `{source.Text[at]}` is not closed", "close it, or indent the lines that belong to it deeper"),
        };
    }

    public static Diagnostic For(Exception e, SourceText source, int at)
    {
        (_, string message, string fix) = s_known.FirstOrDefault(k => e.Message.Contains(k.Marker, StringComparison.OrdinalIgnoreCase));
        at = Math.Min(at, Math.Max(0, source.Text.TrimEnd().Length - 1));
        return BookMessages.Syntax(
            source.Between(at, at + 1), message ?? "this is not understood as YAML", fix ?? "check indentation, quotes, brackets and the space after each colon");
    }
}
