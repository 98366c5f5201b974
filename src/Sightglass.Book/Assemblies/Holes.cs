using System.Text.RegularExpressions;

namespace Sightglass.Book.Assemblies;

/// <summary>The holes of a text: <c>{name}</c>.</summary>
internal static partial class Holes
{
    public static bool Any(string text) => text.Contains('{', StringComparison.Ordinal) && Hole().IsMatch(text);

    public static IEnumerable<string> In(string text) => Hole().Matches(text).Select(m => m.Groups[1].Value);

    /// <summary>The parameter whose hole is all of a text, or null.</summary>
    public static string? Whole(string text) => Hole().Match(text.Trim()) is { Success: true } m && m.Length == text.Trim().Length ? m.Groups[1].Value : null;

    /// <summary>The text with its holes filled.</summary>
    public static string Fill(string text, Func<string, string> fill) => Hole().Replace(text, m => fill(m.Groups[1].Value));

    [GeneratedRegex(@"\{([^{}]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Hole();
}
