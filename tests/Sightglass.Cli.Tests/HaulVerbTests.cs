namespace Sightglass.Cli.Tests;

/// <summary>What the verb says; what comes out is the business of the world's own tests.</summary>
public sealed class HaulVerbTests
{
    private const string Route = "Saltmarsh to Windlass";

    [Fact]
    public async Task Haul_WithoutARoute_ListsThem()
    {
        Call call = await Call.Of("haul");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("Saltmarsh to Windlass: 58.0 mi. Along the estuary", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Haul_ATrain_TellsTimeFuelClimbAndStop()
    {
        Call call = await Call.Of("haul", Route, "--train", "local train", "--fuel", "60 %", "--stop-at", "12 mi");
        Assert.Equal(ExitCode.Good, call.Exit);
        string told = string.Join(' ', call.Output.Split([' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries)); // lines are broken where they are full
        foreach (string says in new[] { "It arrives at Windlass Junction after 1:", "forward compartment", "further before machine 1 is down to its margin", "The ruling grade lies at milepost", "12.0 mi", "The dynamic brake is never counted", "What it leaves out", "qualified people" })
        {
            Assert.Contains(says, told, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Haul_InSpanish_SaysItInSpanish()
    {
        Call call = await Call.Of("haul", Route, "--train", "local train", "--language", "es");
        Assert.Contains("Llega a empalme de Windlass", call.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("milepost", call.Output, StringComparison.Ordinal);
    }

    /// <summary>The answer is no where it starves; the plot is drawn all the same.</summary>
    [Fact]
    public async Task Haul_LowOnFuel_SaysNoAndDraws()
    {
        using ScratchFolder scratch = new();
        Call call = await Call.Of("haul", Route, "--train", "local train", "--fuel", "4 %", "--plot", scratch.At("haul.svg"));
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("stops for want of fuel at milepost", call.Output, StringComparison.Ordinal);
        Assert.Contains("Lantern Bridge", File.ReadAllText(scratch.At("haul.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("did you mean `Saltmarsh to Windlass`", "Saltmarsh to Windlas")]
    [InlineData("did you mean `local train`", Route, "--train", "local trian")]
    [InlineData("there is no machine 2", Route, "--dead", "2")]
    [InlineData("did you mean `wet`", Route, "--rail", "wett")]
    [InlineData("is no share", Route, "--fuel", "full")]
    [InlineData("write `NAME = VALUE`", Route, "--set", "aft supply valve")]
    [InlineData("write a milepost", Route, "--stop-at", "soon")]
    [InlineData("no road number `1`", Route, "--road-number", "1")]
    public async Task Haul_WrongUse_SaysWhatIsRight(string says, params string[] arguments)
    {
        Call call = await Call.Of(["haul", .. arguments]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(says, call.Error, StringComparison.Ordinal);
    }

    /// <summary>A book whose machine says nothing of how it runs.</summary>
    [Fact]
    public async Task Haul_BookWithoutRunning_SaysWhatItLacks()
    {
        using ScratchFolder scratch = new();
        scratch.Write("book/book.yaml", "book: A\nlength: 20 m\nroutes: { r: { stretches: [{ to: 3 mi, limit: 40 mph }] } }\n");
        Call call = await Call.Of("haul", "r", "--book", scratch.At("book"));
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("it lacks `running` with `pulls`", call.Error, StringComparison.Ordinal);
    }
}
