namespace Sightglass.Architecture.Tests;

/// <summary>The files of this repository, as they lie on disk (build output left out), in ordinal order of their paths.</summary>
internal static class RepositoryFiles
{
    private static readonly HashSet<string> s_skippedFolders =
        new(StringComparer.Ordinal) { "bin", "obj", ".git", "out", "TestResults", "node_modules" };

    public static readonly string Root = FindRoot();

    /// <summary>Paths with forward slashes, relative to the root.</summary>
    public static IReadOnlyList<string> All { get; } = List();

    public static IEnumerable<string> Code(string folder) =>
        All.Where(p => p.StartsWith(folder + "/", StringComparison.Ordinal)
            && (p.EndsWith(".cs", StringComparison.Ordinal) || p.EndsWith(".razor", StringComparison.Ordinal)));

    public static IEnumerable<string> Projects(string folder) =>
        All.Where(p => p.StartsWith(folder + "/", StringComparison.Ordinal) && p.EndsWith(".csproj", StringComparison.Ordinal));

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Sightglass.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Sightglass.slnx was not found above the test's folder.");
    }

    private static List<string> List()
    {
        List<string> found = [];
        Visit(Root, found);
        found.Sort(StringComparer.Ordinal);
        return found;
    }

    private static void Visit(string folder, List<string> found)
    {
        foreach (string file in Directory.EnumerateFiles(folder))
        {
            found.Add(Path.GetRelativePath(Root, file).Replace('\\', '/'));
        }

        foreach (string inner in Directory.EnumerateDirectories(folder))
        {
            if (!s_skippedFolders.Contains(Path.GetFileName(inner)))
            {
                Visit(inner, found);
            }
        }
    }
}
