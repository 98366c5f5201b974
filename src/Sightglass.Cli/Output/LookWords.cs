using Sightglass.Basics.Diagnostics;
using Sightglass.Trials.Causes;

namespace Sightglass.Cli.Output;

/// <summary>What somebody saw, as typed: <c>brake pipe gauge: lower</c>.</summary>
internal static class LookWords
{
    private static readonly (string Word, int Shows)[] s_words = [("as usual", 0), ("lower", -1), ("higher", 1)];

    /// <returns>Null, or what is wrong.</returns>
    public static string? Read(string text, CauseTable table, out int look, out int shows)
    {
        int colon = text.LastIndexOf(':');
        string name = (colon < 0 ? text : text[..colon]).Trim(), word = colon < 0 ? "" : text[(colon + 1)..].Trim();
        look = table.Looks.ToList().FindIndex(l => l.Name == name);
        (string Word, int Shows)[] fits = [.. s_words.Where(w => w.Word == word)];
        shows = fits is [var one] ? one.Shows : 0;
        return look < 0 ? $"Nothing is told by `{name}`; {Nearest.DidYouMean(name, table.Looks.Select(l => l.Name)) ?? $"look at one of: {string.Join("; ", table.Looks.Select(l => l.Name))}"}"
            : fits.Length == 0 ? $"Write what `{name}` shows: `{name}: as usual`, `{name}: lower` or `{name}: higher`."
            : null;
    }

    /// <summary>What a look at something asks.</summary>
    public static string Of(Look look) => look.Kind switch
    {
        LookKind.Sign => $"{look.Name}?",
        LookKind.Lamp => $"{look.Name}: lit as usual?",
        LookKind.Position => $"{look.Name}: where it belongs?",
        _ => $"{look.Name}: shows the usual?",
    };
}
