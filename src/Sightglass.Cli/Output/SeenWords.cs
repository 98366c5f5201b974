using Sightglass.Basics.Diagnostics;
using Sightglass.Trials.Causes;

namespace Sightglass.Cli.Output;

/// <summary>What somebody saw, as typed: <c>load lamp: dark</c>.</summary>
internal static class SeenWords
{
    private static readonly (string Word, int Shows)[] s_always = [("as usual", 0), ("lower", -1), ("higher", 1)];

    /// <returns>Null, or what is wrong.</returns>
    public static string? Read(string text, CauseTable table, out int look, out int shows)
    {
        int colon = text.LastIndexOf(':');
        string name = (colon < 0 ? text : text[..colon]).Trim(), word = colon < 0 ? "" : text[(colon + 1)..].Trim();
        look = table.Looks.ToList().FindIndex(l => l.Name == name);
        shows = 0;
        if (look < 0)
        {
            return $"Nothing is told by `{name}`; {Nearest.DidYouMean(name, table.Looks.Select(l => l.Name)) ?? $"look at one of: {string.Join("; ", table.Looks.Select(l => l.Name))}"}";
        }

        LookAnswer[] answers = [.. LookWords.Answers(table, look)];
        (string, int Shows)[] fits = [.. answers.Select(a => (a.Words, a.Shows)).Concat(s_always).Where(a => a.Item1 == word)];
        shows = fits.Length > 0 ? fits[0].Shows : 0;
        return fits.Length > 0 ? null : $"Write what `{name}` shows: {string.Join(" or ", answers.Select(a => $"`{name}: {a.Words}`"))}";
    }
}
