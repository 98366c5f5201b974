using System.Runtime.CompilerServices;

namespace Sightglass.Book.Tests.Committed;

/// <summary>Files of the repository that are made from the code. Set SIGHTGLASS_ACCEPT=1 to write them anew.</summary>
internal static class RepositoryFile
{
    public static string PathOf(string name) => Path.Combine(Root(), name);

    public static void AssertIs(string name, string expected)
    {
        string path = PathOf(name);
        if (Environment.GetEnvironmentVariable("SIGHTGLASS_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, expected);
        }

        Assert.True(File.Exists(path) && File.ReadAllText(path) == expected, $"{name} is stale: run the tests of the book with SIGHTGLASS_ACCEPT=1 and commit it.");
    }

    private static string Root([CallerFilePath] string here = "")
    {
        DirectoryInfo? folder = new FileInfo(here).Directory;
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Sightglass.slnx")))
        {
            folder = folder.Parent;
        }

        return folder!.FullName;
    }
}
