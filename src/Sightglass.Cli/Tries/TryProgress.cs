using Sightglass.Trials.Tries;
using Spectre.Console;

namespace Sightglass.Cli.Tries;

/// <summary>Shows how far a trial is, where a person looks on.</summary>
internal static class TryProgress
{
    public static TryResult Watch(TextWriter error, TryRequest request, Func<TryRequest, TryResult> run)
    {
        if (!ReferenceEquals(error, Console.Error) || Console.IsErrorRedirected)
        {
            return run(request);
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(error) });
        return console.Progress().AutoClear(true).Start(progress =>
        {
            ProgressTask task = progress.AddTask(Markup.Escape(request.Setup.Situation.Name), maxValue: request.Options.Cases);
            return run(request with { Options = request.Options with { Progress = done => task.Value = Math.Max(task.Value, done) } });
        });
    }
}
