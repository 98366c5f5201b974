namespace Sightglass.Cli.Tests;

public sealed class WalkVerbTests
{
    [Fact]
    public async Task Walk_TheDemo_NamesEveryPlace()
    {
        Call call = await Call.Of("walk", "books/curlew");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("FUEL PANEL, RIGHT", call.Output, StringComparison.Ordinal);
        Assert.Contains("Invented", call.Output, StringComparison.Ordinal);
        Assert.All(call.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 140));
    }

    [Fact]
    public async Task Walk_AnUnknownPlace_SaysWhichMayBeMeant()
    {
        Call call = await Call.Of("walk", "--place", "fuel panel, rihgt");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("did you mean `fuel panel, right`?", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Walk_ToAFile_DrawsAStripThatStandsAlone()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("walk", "--svg", scratch.At("strip.svg"));
        Assert.Equal(ExitCode.Good, call.Exit);
        string svg = await File.ReadAllTextAsync(scratch.At("strip.svg"));
        Assert.StartsWith("<svg", svg, StringComparison.Ordinal);
        Assert.Contains("<style>", svg, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Walk_AnUnknownRoadNumber_IsWrongUse()
    {
        Call call = await Call.Of("walk", "--road-number", "9");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("4107", call.Error, StringComparison.Ordinal);
    }
}
