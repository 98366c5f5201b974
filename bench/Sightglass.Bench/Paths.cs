namespace Sightglass.Bench;

/// <summary>Where things lie in the repository.</summary>
internal static class Paths
{
    public static readonly string Root = FindRoot();

    /// <summary>Where the baseline is built.</summary>
    public static string Output => Path.Combine(Root, "out", "bench");

    public static string Results => Path.Combine(Root, "bench", "results");

    public static string Problem(string area, string name) => Path.Combine(AppContext.BaseDirectory, "Data", area, name + ".net");

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Sightglass.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Sightglass.slnx was not found above the program's folder.");
    }
}
