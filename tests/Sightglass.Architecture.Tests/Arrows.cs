namespace Sightglass.Architecture.Tests;

/// <summary>Which project may name which: docs/architecture.md. Everything may use Basics.</summary>
internal static class Arrows
{
    private const string Basics = "Basics";

    private static readonly Dictionary<string, string[]> s_down = new(StringComparer.Ordinal)
    {
        [Basics] = [],
        ["Network"] = [Basics],
        ["Book"] = [Basics],
        ["Plant"] = [Basics, "Network", "Book"],
        ["Cards"] = [Basics, "Book"],
        ["World"] = [Basics, "Plant", "Cards"],
        ["Trials"] = [Basics, "World"],
        ["Training"] = [Basics, "Trials", "World"],
        ["Drawing"] = [Basics, "Book", "Plant"],
        ["Paper"] = [Basics, "Training", "Drawing"],
        ["Storage"] = [Basics, "Training"],
        ["Web"] = [Basics, "Network", "Book", "Plant", "Cards", "World", "Trials", "Training", "Drawing", "Paper", "Storage"],
        ["Cli"] = [Basics, "Network", "Book", "Plant", "Cards", "World", "Trials", "Training", "Drawing", "Paper", "Storage", "Web"],
    };

    public static bool IsKnown(string project) => s_down.ContainsKey(project);

    /// <summary>May the first project's file name the second?</summary>
    public static bool IsAllowed(string from, string to) => s_down[from].Contains(to, StringComparer.Ordinal);

    /// <summary>May the first project use types of the second: along one arrow or several?</summary>
    public static bool IsReachable(string from, string to) =>
        IsAllowed(from, to) || s_down[from].Any(between => IsReachable(between, to));
}
