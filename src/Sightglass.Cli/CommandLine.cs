using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Cli.Verbs;

namespace Sightglass.Cli;

/// <summary>The command line: its verbs, its help, and what becomes of a call.</summary>
internal static class CommandLine
{
    /// <summary>Runs one call.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> arguments, TextWriter output, TextWriter error, CancellationToken stop = default)
    {
        try
        {
            RootCommand root = Build();
            ParseResult line = root.Parse(arguments);
            if (line.Action is ParseErrorAction)
            {
                WriteErrors(line, error);
                return ExitCode.WrongUse;
            }

            if (!LanguageOption.Apply(line, error))
            {
                return ExitCode.WrongUse;
            }

            InvocationConfiguration configuration = new()
            {
                Output = output,
                Error = error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = TimeSpan.FromSeconds(60),
            };
            return await line.InvokeAsync(configuration, stop);
        }
        catch (OperationCanceledException)
        {
            await error.WriteLineAsync("Stopped.");
            return ExitCode.No;
        }
        catch (UnwritableFileException refused)
        {
            await error.WriteLineAsync(refused.Message);
            return ExitCode.WrongUse;
        }
#pragma warning disable CA1031 // Whatever it is, it is a defect: it is told, and its trace kept.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            CrashReport.Write(defect, arguments, error);
            return ExitCode.Internal;
        }
    }

    /// <summary>The root with every verb.</summary>
    public static RootCommand Build()
    {
        RootCommand root = new("A workbench for the instructor who brings people to a locomotive class: a class book in, a tried card out.");
        foreach (Verb verb in AllVerbs.Create())
        {
            root.Add(verb);
        }

        root.Add(LanguageOption.Create());
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        if (help.Action is SynchronousCommandLineAction usual)
        {
            help.Action = new ExampleHelp(usual);
        }

        return root;
    }

    private static void WriteErrors(ParseResult line, TextWriter error)
    {
        foreach (System.CommandLine.Parsing.ParseError e in line.Errors)
        {
            error.WriteLine(e.Message);
        }

        string verb = line.CommandResult.Command is Verb v ? $"{v.Name} " : "";
        IEnumerable<string> names = line.CommandResult.Command.Subcommands.Select(c => c.Name).Concat(line.CommandResult.Command.Options.Select(o => o.Name));
        foreach (string typed in line.UnmatchedTokens)
        {
            if (Basics.Diagnostics.Nearest.DidYouMean(typed, names) is { } hint)
            {
                error.WriteLine($"`{typed}`: {hint}");
            }
        }

        error.WriteLine($"'{ExampleHelp.Program} {verb}--help' says how it is used, with examples.");
    }
}
