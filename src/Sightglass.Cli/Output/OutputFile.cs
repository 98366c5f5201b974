using System.CommandLine;

namespace Sightglass.Cli.Output;

/// <summary>Files that verbs write: a name that cannot be one is told before the work begins, a disk that refuses after it, both as wrong use.</summary>
internal static class OutputFile
{
    /// <summary>An option that names a file to write.</summary>
    /// <param name="name">With its dashes.</param>
    /// <param name="description">What is written.</param>
    /// <param name="orTerminal">Whether <c>-</c> means the terminal.</param>
    public static Option<string?> Option(string name, string description, bool orTerminal = false)
    {
        Option<string?> option = new(name) { Description = description, HelpName = "FILE" };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [var only] && !(orTerminal && only.Value == "-") && WhyNot(only.Value) is { } why)
            {
                result.AddError($"{name}: {why}");
            }
        });
        return option;
    }

    public static void Write(string path, string text) => To(path, () => File.WriteAllText(path, text));

    public static void Write(string path, byte[] bytes) => To(path, () => File.WriteAllBytes(path, bytes));

    /// <summary>Writes in a way of its own.</summary>
    /// <exception cref="UnwritableFileException">The disk refuses.</exception>
    public static void To(string path, Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UnwritableFileException(WhyNot(path) ?? $"`{path}` cannot be written ({e.Message.TrimEnd('.')}); name a file where you may write and where there is room.", e);
        }
    }

    /// <summary>What is wrong with a name, and what would be right; null where a file may be written there, as far as can be seen without writing.</summary>
    private static string? WhyNot(string path)
    {
        if (path.Length == 0)
        {
            return "the name of the file is empty; name a file.";
        }

        if (Directory.Exists(path))
        {
            return $"`{path}` cannot be written: it is a folder; name a file in it.";
        }

        string folder = Path.GetDirectoryName(path) is { Length: > 0 } named ? named : ".";
        return Directory.Exists(folder) ? null
            : File.Exists(folder) ? $"`{path}` cannot be written: `{folder}` is a file, not a folder; name a file in a folder."
            : $"`{path}` cannot be written: there is no folder `{folder}`; make it, or name one that is there.";
    }
}
