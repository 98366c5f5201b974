using Sightglass.Cli.Books;

namespace Sightglass.Cli.Tests;

/// <summary>A call of the command line, made in the repository's root, with what it wrote.</summary>
internal sealed record Call(int Exit, string Output, string Error)
{
    public static readonly string Root = FindRoot();

    /// <summary>Hundreds of calls in one process ask for the same few books.</summary>
    static Call() => BookInspection.Memory = new();

    public static async Task<Call> Of(params string[] arguments)
    {
        Directory.SetCurrentDirectory(Root);
        StringWriter output = new();
        StringWriter error = new();
        int exit = await CommandLine.RunAsync(arguments, output, error);
        return new(exit, output.ToString(), error.ToString());
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Sightglass.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Sightglass.slnx was not found above the test's folder.");
    }
}
