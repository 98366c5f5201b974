using Sightglass.Cli.Verbs;

namespace Sightglass.Cli.Tests;

public sealed class CommandLineTests
{
    public static TheoryData<string> Verbs => [.. AllVerbs.Create().Select(v => v.Name)];

    public static TheoryData<string> Examples => [.. AllVerbs.Create().SelectMany(v => v.Examples).Select(e => e.Call).Where(Ends)];

    [Theory]
    [MemberData(nameof(Verbs))]
    public async Task Help_OfAVerb_TeachesByExamples(string verb)
    {
        Call call = await Call.Of(verb, "--help");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("Examples:", call.Output, StringComparison.Ordinal);
        Assert.Contains($"-- {verb}", call.Output, StringComparison.Ordinal);
        Assert.Contains("--json", call.Output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task RunAsync_WithAnExampleOfTheHelp_IsUnderstood(string example)
    {
        using ScratchFolder scratch = new();
        string[] words = [.. Words(example).Select(w => w.Contains('.', StringComparison.Ordinal) && char.IsAsciiLetter(w[^1]) && !w.Contains('/', StringComparison.Ordinal) ? scratch.At(w) : w)];
        bool told = false;
        foreach (int at in words.Index().Where(w => w.Item is "--cases" or "--try").Select(w => w.Index))
        {
            (words[at + 1], told) = ("16", true); // that it is understood shows in a few of them
        }

        string own = words[0] == "new" ? scratch.At("my-class") : "books/smallest";
        Call call = await Call.Of([.. words.Select(w => w == "my-class" ? own : w), .. words[0] == "try" && !told ? (string[])["--cases", "16"] : []]);
        Assert.True(call.Exit is ExitCode.Good or ExitCode.No, $"{call.Exit}: {call.Error}");
        Assert.Empty(call.Error);
    }

    [Fact]
    public async Task RunAsync_WithAMistypedVerb_SaysWhichMayBeMeant()
    {
        Call call = await Call.Of("chekc");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("did you mean `check`?", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_WithoutAVerb_IsWrongUse() => Assert.Equal(ExitCode.WrongUse, (await Call.Of()).Exit);

    [Fact]
    public async Task RunAsync_WhereTheProgramBreaks_AsksToReport()
    {
        StringWriter error = new();
        int exit = await CommandLine.RunAsync(["check", "books/smallest"], new BrokenWriter(), error);
        Assert.Equal(ExitCode.Internal, exit);
        string told = error.ToString();
        Assert.Contains("Please report it", told, StringComparison.Ordinal);
        string path = told.Split(' ', '\n').Single(w => w.EndsWith(".txt,", StringComparison.Ordinal)).TrimEnd(',');
        Assert.Contains(nameof(BrokenWriter), await File.ReadAllTextAsync(path), StringComparison.Ordinal);
        File.Delete(path);
    }

    /// <summary>Not those that serve until they are stopped, and not those that need a session's record (<see cref="RecordedRunTests"/>) or what a phone brought (<see cref="WalkDownVerbTests"/>).</summary>
    private static bool Ends(string call) => !call.StartsWith("start", StringComparison.Ordinal) && !call.StartsWith("serve", StringComparison.Ordinal)
        && !call.Contains("--record ", StringComparison.Ordinal) && !call.Contains("--take ", StringComparison.Ordinal) && !call.StartsWith("proposals", StringComparison.Ordinal);

    private static IEnumerable<string> Words(string line)
    {
        string[] parts = line.Split('"');
        return parts.SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
