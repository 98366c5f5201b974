using System.CommandLine;

namespace Sightglass.Cli.Verbs;

/// <summary>One verb of the command line, with examples for its help.</summary>
internal abstract class Verb : Command
{
    protected Verb(string name, string description)
        : base(name, description)
    {
        Add(Json);
        SetAction(RunAsync);
    }

    /// <summary>Calls that work in a clone of the repository, each with what it is for.</summary>
    public abstract IReadOnlyList<(string Call, string Says)> Examples { get; }

    protected Option<bool> Json { get; } = new("--json") { Description = "Answer in JSON; its schema is in docs/schemas." };

    /// <summary>Does it.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    protected abstract Task<int> RunAsync(ParseResult line, CancellationToken stop);

    /// <summary>Says what was wrong with the call.</summary>
    protected static Task<int> WrongUse(ParseResult line, string message)
    {
        line.InvocationConfiguration.Error.WriteLine(message);
        return Task.FromResult(ExitCode.WrongUse);
    }
}
