using System.Text.RegularExpressions;

namespace Sightglass.Architecture.Tests;

/// <summary>C# source reduced to what the compiler acts on, so that prose in comments and texts is not mistaken for code.</summary>
internal static partial class CodeText
{
    /// <summary>The source with comments, string and character literals emptied (line ends kept).</summary>
    public static string WithoutProse(string source) =>
        Prose().Replace(source, m => new string('\n', m.Value.Count(c => c == '\n')));

    /// <summary>Every word of every identifier, lower case: <c>CloseSupplyValve</c> gives close, supply, valve.</summary>
    public static IEnumerable<string> IdentifierWords(string source) =>
        Word().Matches(WithoutProse(source)).Select(m => m.Value.ToLowerInvariant());

    /// <summary>Names of the types declared at the left margin, which is where top-level types stand under file-scoped namespaces.</summary>
    public static IEnumerable<string> TopLevelTypes(string source) =>
        TypeDeclaration().Matches(WithoutProse(source)).Select(m => m.Groups["name"].Value).Distinct(StringComparer.Ordinal);

    [GeneratedRegex("""
        //[^\n]*|/\*.*?\*/|\$*""\"[\s\S]*?""\"|\$?@\$?"(?:""|[^"])*"|\$?"(?:\\.|[^"\\\n])*"|'(?:\\.[^']*|[^'\\\n])'
        """, RegexOptions.Singleline)]
    private static partial Regex Prose();

    [GeneratedRegex("[A-Z]+(?![a-z])|[A-Z]?[a-z]+")]
    private static partial Regex Word();

    [GeneratedRegex("""
        ^(?:(?:public|internal|file|sealed|static|abstract|readonly|partial|ref|unsafe)\s+)*(?:class|record\s+struct|record\s+class|record|struct|enum|interface|delegate\s+[\w<>?,\s]+?)\s+(?<name>\w+)
        """, RegexOptions.Multiline)]
    private static partial Regex TypeDeclaration();

    /// <summary>The lines that bring names in, as they stand, without those that hold for a whole project.</summary>
    public static IEnumerable<string> Usings(string source) =>
        source.Split('\n').TakeWhile(l => !l.StartsWith("namespace ", StringComparison.Ordinal)).Select(l => l.Trim()).Where(l => l.StartsWith("using ", StringComparison.Ordinal) && l.EndsWith(';'));

    /// <summary>System, others, static, other names.</summary>
    public static int UsingOrder(string line) =>
        line.Contains('=', StringComparison.Ordinal) ? 3 : line.StartsWith("using static ", StringComparison.Ordinal) ? 2 : UsingName(line) is "System" || UsingName(line).StartsWith("System.", StringComparison.Ordinal) ? 0 : 1;

    public static string UsingName(string line) => line["using ".Length..].TrimEnd(';').Replace("static ", "", StringComparison.Ordinal);
}
