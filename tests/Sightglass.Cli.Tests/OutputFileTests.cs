using System.CommandLine;

namespace Sightglass.Cli.Tests;

/// <summary>Every option of every verb that names a file to write: a name that cannot be one is wrong use, told with the path, not a defect.</summary>
public sealed class OutputFileTests
{
    /// <summary>A call of each such verb that lacks only the file.</summary>
    private static readonly Dictionary<string, string[]> s_calls = new()
    {
        ["calc"] = ["calc", "horn", "level = 100", "distance = 400 ft"],
        ["check"] = ["check", "books/curlew", "--language", "es"],
        ["haul"] = ["haul", "Saltmarsh to Windlass"],
        ["lesson"] = ["lesson", "first look"],
        ["paper"] = ["paper", "walk"],
        ["recording --save"] = ["recording", "stopped on the grade", "--drill", "again", "--card", "the-engine-runs-hot"],
        ["recording"] = ["recording", "stopped on the grade", "--rows", "1"],
        ["run"] = ["run", "leaking compartment", "--for", "1min", "--every", "30 s"],
        ["train"] = ["train", "local train"],
        ["try"] = ["try", "drain-water", "--cases", "1"],
        ["try --drill"] = ["try", "empty-a-leaking-compartment-draft", "-s", "leaking compartment", "--road-number", "4112", "--cases", "8"],
        ["walk"] = ["walk"],
        ["walkdown"] = ["walkdown", "fuel"],
    };

    /// <summary>Options that name a file to read.</summary>
    private static readonly string[] s_read = ["--from", "--record", "--room-certificate", "--take"];

    public static TheoryData<string, string> Options => [.. CommandLine.Build().Subcommands
        .SelectMany(v => v.Options.Where(o => o.HelpName == "FILE" && !s_read.Contains(o.Name)).Select(o => (v.Name, o.Name)))];

    [Fact]
    public void Options_OfTheCommandLine_AreTheKnownOnes() =>
        Assert.Equal(
            ["calc --plot", "check --missing", "haul --plot", "lesson --html", "lesson --vtt", "paper --html", "paper --pdf", "recording --csv", "recording --plot", "recording --save", "run --csv", "run --plot", "run --save", "train --html", "train --pdf", "try --drill", "try --html", "try --outcomes", "try --pocket", "walk --svg", "walkdown --html"],
            Options.Select(o => $"{o.Data.Item1} {o.Data.Item2}").Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Options))]
    public async Task Write_WhereNoFileCanBe_IsWrongUseWithThePath(string verb, string option)
    {
        using ScratchFolder scratch = new();
        string file = scratch.Write("a.txt", "");
        await Refused(verb, option, scratch.At("no/such/x.out"), $"there is no folder `{scratch.At("no/such")}`; make it");
        await Refused(verb, option, scratch.Folder, "it is a folder; name a file in it");
        await Refused(verb, option, Path.Combine(file, "x.out"), $"`{file}` is a file, not a folder");
        Assert.Equal([file], Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    /// <summary>Linux lets nobody make a file in /sys, whoever asks (seen, no source).</summary>
    [Theory]
    [MemberData(nameof(Options))]
    public async Task Write_WithoutPermission_IsWrongUseWithThePath(string verb, string option)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Directory.Exists("/sys"), "There is no folder in which nobody may write.");
        await Refused(verb, option, "/sys/sightglass.out", "name a file where you may write");
    }

    /// <summary>A failing case as a file of the book; where nothing fails, none is written and it is said.</summary>
    [Fact]
    public async Task Try_Drill_WritesTheCaseThatFails()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("found.yaml");
        Call call = await Call.Of([.. s_calls["try --drill"], "--drill", file]);
        Assert.Contains($"Written: {file}.", call.Output, StringComparison.Ordinal);
        Assert.Contains("solved by:\n      - empty-a-leaking-compartment\n", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        File.Delete(file);
        Call none = await Call.Of([.. s_calls["try"], "--drill", file]);
        Assert.Contains("nothing failed that could be laid out", none.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public async Task New_InAFile_IsWrongUse()
    {
        using ScratchFolder scratch = new();
        string file = scratch.Write("a.txt", "");
        Call call = await Call.Of("new", Path.Combine(file, "book"));
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains($"`{file}` is a file, not a folder", call.Error, StringComparison.Ordinal);
    }

    private static async Task Refused(string verb, string option, string path, string says)
    {
        Call call = await Call.Of([.. s_calls.GetValueOrDefault($"{verb} {option}") ?? s_calls[verb], option, path]);
        Assert.True(call.Exit == ExitCode.WrongUse, call.Error);
        Assert.Contains($"`{path}` cannot be written", call.Error, StringComparison.Ordinal);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }
}
