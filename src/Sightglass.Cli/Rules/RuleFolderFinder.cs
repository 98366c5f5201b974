namespace Sightglass.Cli.Rules;

/// <summary>Finds the sets of rules that are meant: a folder, a name under <c>rules</c>, or all of them there; else those that came with the program.</summary>
internal static class RuleFolderFinder
{
    private const string Home = "rules";

    /// <param name="named">As given, or null.</param>
    /// <returns>Folders, as they are to be shown; none where there is none.</returns>
    public static IReadOnlyList<string> Find(string? named)
    {
        string[] homes = [Home, Path.Combine(AppContext.BaseDirectory, Home)];
        if (named is not null)
        {
            return [.. homes.Select(h => Path.Combine(h, named)).Prepend(named).Where(Directory.Exists).Take(1)];
        }

        string? home = Array.Find(homes, Directory.Exists);
        return home is null ? [] : [.. Directory.EnumerateDirectories(home).Order(StringComparer.Ordinal).Select(f => f.Replace('\\', '/'))];
    }

    /// <summary>Names that could be written.</summary>
    public static IEnumerable<string> Names => Find(null).Select(f => Path.GetFileName(f));
}
