using System.Net;

namespace Sightglass.Cli.Tests;

/// <summary>What the verb says of a train; what is worked out is the business of the check's own tests.</summary>
public sealed class TrainVerbTests
{
    [Fact]
    public async Task Train_WithoutOne_ListsThoseOfTheBook() => Assert.Contains("night mail: The machine with an older baggage car", (await Call.Of("train")).Output, StringComparison.Ordinal);

    [Fact]
    public async Task Train_ThatIsNotFit_SaysSoFirstAndWhy()
    {
        using ScratchFolder scratch = new();
        string pdf = scratch.At("train.pdf"), html = scratch.At("train.html");
        Call call = await Call.Of("train", "docs/guide/a-train.yaml", "--pdf", pdf, "--html", html);
        Assert.Equal(ExitCode.No, call.Exit);
        string said = string.Join(' ', call.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (string says in new[]
        {
            "Not fit to leave.", "Stops it: 92.8 % of the brakes work.", "Car 5: its brakes are not all set", "Mend: No car has head-end power", "Head-end left: does not reach",
            "lock and tag", "going between (asked of engineer)", "Unit 2 answers", "nobody has looked at this train", "qualified people decide",
        })
        {
            Assert.Contains(says, said, StringComparison.Ordinal);
        }

        Assert.StartsWith("%PDF", File.ReadAllText(pdf), StringComparison.Ordinal);
        Assert.Contains("Not fit to leave.", File.ReadAllText(html), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Train_InSpanish_SaysIt() => Assert.Contains("Revisión del tren: Tren local", WebUtility.HtmlDecode((await Spanish()).Split("\0")[1]), StringComparison.Ordinal);

    [Theory]
    [InlineData("There is no file and no train `nihgt mail`; did you mean `night mail`?", "nihgt mail")]
    [InlineData("the book has: double-headed express", "something else altogether")]
    [InlineData("--grade is 12; it can be 0 to 10, in per cent", "night mail", "--grade", "12")]
    [InlineData("--adhesion is 0; it can be 1 to 50, in per cent", "night mail", "--adhesion", "0")]
    [InlineData("is no sheet for this paper", "night mail", "--size", "a6")]
    [InlineData("no road number `1`", "night mail", "--road-number", "1")]
    public async Task Train_WrongUse_SaysWhatIsRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(["train", .. arguments]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Train_OfAFileWithMistakes_TellsAllWithTheirPlaces()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("train", scratch.Write("mine.yaml", "vehicles:\n  - machine\n  - coahc\n  - { vehicle: coach, wieght: 3 t }\n"));
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("mine.yaml:3:5: B100: there is no car `coahc`; did you mean `coach`?", call.Error, StringComparison.Ordinal);
        Assert.Contains("mine.yaml:4:", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0x61, 0xFF }, "is not UTF-8")]
    [InlineData(new byte[0], "must be one map of keys, not nothing")]
    public async Task Train_OfAFileThatIsNone_IsRefused(byte[] bytes, string says)
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("mine.yaml");
        await File.WriteAllBytesAsync(file, bytes, TestContext.Current.CancellationToken);
        Call call = await Call.Of("train", file);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    private static async Task<string> Spanish()
    {
        using ScratchFolder scratch = new();
        string html = scratch.At("train.html");
        Call call = await Call.Of("train", "local train", "--language", "es", "--html", html);
        return call.Output + "\0" + File.ReadAllText(html);
    }
}
