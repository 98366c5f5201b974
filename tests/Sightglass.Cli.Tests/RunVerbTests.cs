using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;

namespace Sightglass.Cli.Tests;

public sealed class RunVerbTests
{
    private static readonly string[] s_smallest = ["run", "--book", "books/smallest"];

    /// <summary>Torricelli: 1.2 m falls to 0.3 m in 1219.1158 s (White, Fluid Mechanics, from memory); here read between whole seconds.</summary>
    [Fact]
    public async Task A1_01_Run_TheSmallestBook_DrainsAsTorricelliSays()
    {
        Call call = await Call.Of([.. s_smallest, "--for", "1230 s", "--every", "1 s", "--show", "level of tank", "--csv", "-"]);
        string[] lines = call.Output.Trim().Split('\n');
        Assert.Equal("time_s,level of tank [m]", lines[0]);
        double Level(int second) => double.Parse(lines[1 + second].Split(',')[1], CultureInfo.InvariantCulture);
        double between = Level(1219) + (0.1158 * (Level(1220) - Level(1219)));
        Assert.Equal(0.3, between, 1e-4);
    }

    [Fact]
    public async Task Run_SampledOftenOrSeldom_HasTheSameHash()
    {
        string often = await HashOf("--for", "5min", "--every", "0.1 s", "--show", "all");
        string seldom = await HashOf("--for", "5min", "--every", "60 s");
        Assert.Equal(often, seldom);
        Assert.NotEqual(often, await HashOf("--for", "4min", "--every", "60 s"));
    }

    [Fact]
    public async Task Run_AnyFormula_IsRecordedInTheBooksUnits()
    {
        Call call = await Call.Of("run", "idle, nothing wrong", "--for", "1 s", "--show", "volume of aft compartment + volume of centre compartment", "engine runs", "aft supply valve", "--csv", "-");
        string[] lines = call.Output.Split('\n');
        Assert.Equal("time_s,volume of aft compartment + volume of centre compartment [L],engine runs,aft supply valve", lines[0]);
        Assert.EndsWith(",yes,open", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_OfAnUnknownName_SaysWhichMayBeMeant()
    {
        Call call = await Call.Of([.. s_smallest, "--show", "level of tnak"]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("did you mean `level of tank`?", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_Plot_DrawsReadingsInInkAndTruthWithItsWord()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("run.svg");
        Call call = await Call.Of("run", "idle, nothing wrong", "--for", "2min", "--every", "10s", "--show", "cab fuel gauge", "volume of aft compartment", "engine runs", "aft supply valve", "--plot", file, "--theme", "print");
        Assert.Equal(ExitCode.Good, call.Exit);
        XElement svg = XElement.Load(file);
        Assert.Equal("print", (string?)svg.Attribute("data-theme"));
        string[] words = [.. svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
        Assert.Contains(words, w => w.StartsWith("cab fuel gauge ", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("truth volume of aft compartment ", StringComparison.Ordinal));
        Assert.Contains("engine runs", words);
        Assert.Contains("open", words);
        Assert.Single(svg.Descendants(), e => (string?)e.Attribute("class") == "c-line");
        Assert.Single(svg.Descendants(), e => (string?)e.Attribute("class") == "c-line c-truth");
    }

    [Fact]
    public async Task Run_PlotOfTheSmallestBook_DrawsItsTankWithoutBeingAsked()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("run.svg");
        Call call = await Call.Of([.. s_smallest, "--for", "2min", "--every", "10s", "--plot", file]);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains(XElement.Load(file).Descendants(), e => e.Name.LocalName == "text" && e.Value.Contains("level of tank", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Run_PlotOfAnUnknownName_DrawsNothing()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("run.svg");
        Call call = await Call.Of([.. s_smallest, "--show", "level of tnak", "--plot", file]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("did you mean `level of tank`?", call.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Theory]
    [InlineData("--for", "30")]
    [InlineData("--for", "30 kg")]
    [InlineData("--every", "soon")]
    public async Task Run_ATimeThatIsNone_IsWrongUse(string option, string value)
    {
        Call call = await Call.Of([.. s_smallest, option, value]);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.NotEmpty(call.Error);
    }

    [Fact]
    public async Task Run_AnUnknownSituation_SaysWhichMayBeMeant()
    {
        Call call = await Call.Of("run", "idle, nothing worng");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("did you mean `idle, nothing wrong`?", call.Error, StringComparison.Ordinal);
    }

    private static async Task<string> HashOf(params string[] more)
    {
        Call call = await Call.Of(["run", "idle, nothing wrong", "--json", .. more]);
        Assert.Equal(ExitCode.Good, call.Exit);
        return JsonDocument.Parse(call.Output).RootElement.GetProperty("hash").GetString()!;
    }

    // A number on which nothing differs has no plant of its own, and can be run all the same.
    [Theory]
    [InlineData("4101")]
    [InlineData("4107")]
    public async Task Run_RoadNumberAskedFor_IsTheOneRun(string number)
    {
        Call call = await Call.Of("run", "idle, nothing wrong", "--road-number", number, "--for", "1 s", "--json");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Equal(number, System.Text.Json.JsonDocument.Parse(call.Output).RootElement.GetProperty("road_number").GetString());
    }
}
