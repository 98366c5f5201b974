using System.CommandLine;
using System.CommandLine.Invocation;
using Sightglass.Cli.Verbs;

namespace Sightglass.Cli.Output;

/// <summary>Help that teaches: after the usual parts, calls that work, each with what it is for.</summary>
internal sealed class ExampleHelp(SynchronousCommandLineAction usual) : SynchronousCommandLineAction
{
    /// <summary>How the program is called: by its name where it is installed, else as in a clone of the repository.</summary>
    public static string Program { get; } = IsInstalled() ? "sightglass" : "dotnet run --project src/Sightglass.Cli --";

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        TextWriter output = parseResult.InvocationConfiguration.Output;
        if (parseResult.CommandResult.Command is not Verb verb)
        {
            output.WriteLine("Start here:");
            output.WriteLine($"  {Program} start");
            output.WriteLine($"  {Program} VERB --help");
            return ExitCode.Good;
        }

        output.WriteLine("Examples:");
        foreach ((string call, string says) in verb.Examples)
        {
            output.WriteLine($"  # {says}");
            output.WriteLine($"  {Program} {call}");
        }

        output.WriteLine();
        output.WriteLine("Exit codes: 0 good, 1 the answer is 'no' or was broken off, 2 wrong use, 3 a defect of the program.");
        return ExitCode.Good;
    }

    // A build stands in bin/CONFIGURATION/FRAMEWORK below its project file.
    private static bool IsInstalled()
    {
        DirectoryInfo? project = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)).Parent?.Parent?.Parent;
        return project?.EnumerateFiles("*.csproj").Any() != true;
    }
}
