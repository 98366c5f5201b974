namespace Sightglass.Cli.Tests;

/// <summary>From a recorder's file to a drill, as an instructor types it.</summary>
public sealed class RecordingVerbTests
{
    private const string Name = "stopped on the grade";
    private const string File = "books/curlew/recordings/stopped-on-the-grade.csv";

    [Fact]
    public async Task Recording_WithoutAName_ListsThemWithTheirSituations()
    {
        Call call = await Call.Of("recording");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("67 rows from 14:18:00 to 14:23:30", call.Output, StringComparison.Ordinal);
        Assert.Contains("Drawn from by drill, hot engine as recorded.", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Recording_Named_TellsHowFarTheMachineIsFromIt()
    {
        Call call = await Call.Of("recording", Name, "--rows", "3");
        Assert.True(call.Exit == ExitCode.Good, call.Output + call.Error);
        Assert.Contains("17 of them, from 14:21:35", call.Output, StringComparison.Ordinal);
        Assert.Contains("water temperature gauge, within 4", call.Output, StringComparison.Ordinal);
        Assert.Contains("The states explain the record", call.Output, StringComparison.Ordinal);
    }

    /// <summary>After a minute at idle the water is colder than it was recorded at the start: that is told, row by row.</summary>
    [Fact]
    public async Task Recording_ThatTheMachineDoesNotExplain_IsANo()
    {
        Call call = await Call.Of("recording", Name, "--rows", "2", "--after", "3 min");
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("further than that", call.Output, StringComparison.Ordinal);
        Assert.Contains("do not explain the record everywhere", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Recording_Csv_HasARowForEachThatWasRun()
    {
        Call call = await Call.Of("recording", Name, "--rows", "2", "--csv", "-");
        string[] lines = call.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(3, lines.Length);
        Assert.StartsWith("row,\"Water out [degF], recorded\",water temperature gauge [", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("14:21:35,214.1,", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Recording_AFile_GivesAMappingToFillInThatReads()
    {
        Call call = await Call.Of("recording", File);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("    time: Time\n", call.Output, StringComparison.Ordinal);
        Assert.Contains("    missing:\n      - \"---\"\n", call.Output, StringComparison.Ordinal);
        Assert.Contains("# Speed [mph]: 0 .. 22.4", call.Output, StringComparison.Ordinal);
        using ScratchFolder scratch = new();
        scratch.Write("book/book.yaml", "book: A\n");
        scratch.Write("book/recordings/stopped-on-the-grade.csv", await System.IO.File.ReadAllTextAsync(Path.Combine(Call.Root, File), TestContext.Current.CancellationToken));
        scratch.Write("book/recordings.yaml", call.Output);
        Call check = await Call.Of("check", scratch.At("book"));
        Assert.True(check.Exit == ExitCode.Good, check.Error + check.Output);
    }

    [Fact]
    public async Task Recording_AFileThatIsNone_IsRefusedWithThePlace()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("recording", scratch.Write("x.csv", "a,b\n1,\"2\n"));
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("x.csv:2:3: B112: this quote is not closed", call.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUse, (await Call.Of("recording", scratch.At("none.csv"))).Exit);
        Assert.Equal(ExitCode.No, (await Call.Of("recording", scratch.Write("empty.csv", ""))).Exit);
    }

    [Fact]
    public async Task Recording_Drill_IsAFirstVersionThatCheckAccepts()
    {
        using ScratchFolder scratch = new();
        Copy(Path.Combine(Call.Root, "books", "curlew"), scratch.At("curlew"));
        string[] asked = ["recording", Name, "--book", scratch.At("curlew"), "--drill", "hot again", "--card", "the-engine-runs-hot", "--first", "14:22:00", "--every", "10 s", "--save", scratch.At("curlew/drills/hot-again.yaml")];
        Call call = await Call.Of(asked);
        Assert.True(call.Exit == ExitCode.Good, call.Error);
        string text = await System.IO.File.ReadAllTextAsync(scratch.At("curlew/drills/hot-again.yaml"), TestContext.Current.CancellationToken);
        Assert.Contains("aim: \"TO DECIDE", text, StringComparison.Ordinal);
        Assert.DoesNotContain("temperature of cooling water", text, StringComparison.Ordinal); // that is recorded
        Call check = await Call.Of("check", scratch.At("curlew"));
        Assert.True(check.Exit == ExitCode.Good, check.Error + check.Output);
        Call twice = await Call.Of(asked);
        Assert.Equal(ExitCode.WrongUse, twice.Exit);
        Assert.Contains("already", twice.Error, StringComparison.Ordinal);
        Assert.Equal(text, await System.IO.File.ReadAllTextAsync(scratch.At("curlew/drills/hot-again.yaml"), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Recording_SaveOverAFile_IsRefused()
    {
        using ScratchFolder scratch = new();
        string kept = scratch.Write("kept.yaml", "mine");
        Call call = await Call.Of("recording", File, "--save", kept);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("nothing is written over it", call.Error, StringComparison.Ordinal);
        Assert.Equal("mine", await System.IO.File.ReadAllTextAsync(kept, TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("did you mean `stopped on the grade`", "stoped on the grade")]
    [InlineData("--drill wants --card", Name, "--drill", "x")]
    [InlineData("cannot be the title of a drill", Name, "--drill", "a: b", "--card", "the-engine-runs-hot")]
    [InlineData("already", Name, "--drill", "hot as it was recorded", "--card", "the-engine-runs-hot")]
    [InlineData("There is no card", Name, "--drill", "x", "--card", "nothing of the kind")]
    [InlineData("B114: `from` is `noon`", Name, "--drill", "x", "--card", "the-engine-runs-hot", "--first", "noon")]
    [InlineData("B114: no row", Name, "--drill", "x", "--card", "the-engine-runs-hot", "--first", "15:00:00")]
    [InlineData("No situation `starving engine` draws from", Name, "--situation", "starving engine")]
    [InlineData("--save goes with --drill", Name, "--save", "x.yaml")]
    [InlineData("--csv does not go with --drill", Name, "--drill", "x", "--card", "the-engine-runs-hot", "--csv", "-")]
    [InlineData("--plot goes with a recording of the book", File, "--plot", "x.svg")]
    [InlineData("--rows wants", Name, "--rows", "0")]
    [InlineData("unknown unit", Name, "--after", "3 parsecs")]
    public async Task Recording_AskedWrongly_SaysWhatWouldBeRight(string says, params string[] asked)
    {
        Call call = await Call.Of(["recording", .. asked]);
        Assert.NotEqual(ExitCode.Good, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    private static void Copy(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(f => !f.Contains("/words/", StringComparison.Ordinal)))
        {
            string path = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            System.IO.File.Copy(file, path);
        }
    }
}
