using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cli.Output;

/// <summary>Prints findings, each on its line, so that an editor can go to their places.</summary>
internal static class Findings
{
    /// <param name="output">Where to.</param>
    /// <param name="folder">Put before paths: findings of a book name files relative to it.</param>
    /// <param name="found">In their order.</param>
    public static void Print(TextWriter output, string folder, IEnumerable<Diagnostic> found)
    {
        foreach (Diagnostic d in found)
        {
            string text = d.ToString();
            output.WriteLine(d.Span.Path.Length == 0 || folder.Length == 0 || Path.IsPathRooted(d.Span.Path)
                ? text
                : Path.Combine(folder, text).Replace('\\', '/'));
        }
    }

    /// <summary><c>2 errors, 1 warning</c>.</summary>
    public static string Count(IReadOnlyCollection<Diagnostic> found)
    {
        int errors = found.Count(d => d.Severity == Severity.Error);
        int warnings = found.Count(d => d.Severity == Severity.Warning);
        return $"{Many(errors, "error")}, {Many(warnings, "warning")}";
    }

    public static string Many(int count, string noun) => count == 1 ? $"1 {noun}" : $"{(count == 0 ? "no" : count.ToString(System.Globalization.CultureInfo.InvariantCulture))} {noun}s";
}
