namespace Sightglass.Cli.Output;

/// <summary>Tells of a defect and keeps its trace for a report.</summary>
internal static class CrashReport
{
    /// <summary>Writes the message to the terminal and the trace to a file.</summary>
    public static void Write(Exception defect, IReadOnlyList<string> arguments, TextWriter error)
    {
        string trace = $"{BuildName.Text}{Environment.NewLine}{string.Join(' ', arguments)}{Environment.NewLine}{Environment.OSVersion}{Environment.NewLine}{defect}{Environment.NewLine}";
        string path = Path.Combine(Path.GetTempPath(), $"sightglass-defect-{Environment.ProcessId}.txt");
        error.WriteLine($"A defect of the program: {defect.GetType().Name}: {defect.Message}");
        try
        {
            File.WriteAllText(path, trace);
            error.WriteLine($"Please report it with the file {path}, which holds the trace, and with the book if you may share it.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"Please report it with this trace, and with the book if you may share it.{Environment.NewLine}{trace}");
        }
    }
}
