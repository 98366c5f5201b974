using System.Xml.Linq;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Cli.Tests;

/// <summary><c>calc</c> as people type it.</summary>
public sealed class CalcVerbTests
{
    private static readonly string[] s_stop = ["calc", "stopping", "speed = 79 mph", "deceleration = 0.9 m/s^2"];

    [Fact]
    public async Task List_Groups_HoldEveryCalculator()
    {
        Call call = await Call.Of("calc");
        Assert.All(CalculatorLibrary.All, s => Assert.Contains($"  {s.Name} ", call.Output, StringComparison.Ordinal));
        Assert.All(CalculatorLibrary.Groups, g => Assert.Contains($"{char.ToUpperInvariant(g.Name[0])}{g.Name[1..]}\n", call.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal));
    }

    /// <summary>2273 ft is 692.9 m, A4-09 without dead time and build-up: v²/2a.</summary>
    [Theory]
    [InlineData("us", "2 273 ft, until it stands")]
    [InlineData("si", "692.9 m, until it stands")]
    public async Task Units_OfASystem_AreThoseOfTheResult(string units, string says) =>
        Assert.Contains($"distance        {says}", (await Call.Of([.. s_stop, "--units", units])).Output, StringComparison.Ordinal);

    [Fact]
    public async Task Units_NotSaid_GivesBoth() => Assert.Contains("692.9 m (2 273 ft)", (await Call.Of(s_stop)).Output, StringComparison.Ordinal);

    [Fact]
    public async Task Plot_ToAFile_IsAPictureThatStandsAlone()
    {
        using ScratchFolder scratch = new();
        string file = scratch.At("stop.svg");
        Assert.Equal(ExitCode.Good, (await Call.Of([.. s_stop, "--units", "us", "--plot", file, "--theme", "Light"])).Exit);
        XElement svg = XElement.Load(file);
        Assert.Contains("distance, ft over speed, mph: at 79", (string)svg.Attribute("aria-label")!, StringComparison.Ordinal);
        Assert.Equal("light", (string)svg.Attribute("data-theme")!);
    }

    [Fact]
    public async Task Plot_BeforeAnyValue_IsTold()
    {
        Call call = await Call.Of("calc", "stopping", "--plot", "x.svg");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains("nothing to plot before values are put in", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Values_WrongAndMissing_AreToldOneByOne()
    {
        Call call = await Call.Of("calc", "stopping", "speed = 79");
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Equal(
            "“speed”: “79” has no unit. Write one behind it: m/s, km/h, mph, ft/s.\n“deceleration” is missing: when the brakes are full. Write it like “0.9 m/s^2”.\n",
            call.Error.ReplaceLineEndings("\n"));
        Assert.Empty(call.Output);
    }

    [Fact]
    public async Task Values_WithoutAnAnswer_AreNo() =>
        Assert.Equal(ExitCode.No, (await Call.Of("calc", "stopping on a grade", "speed = 60 mph", "deceleration = 0.1 m/s^2", "grade = -5 %")).Exit);

    /// <summary>In Spanish with Spanish names; the answer for a script stays as it is.</summary>
    [Fact]
    public async Task Language_Spanish_TakesAndSaysSpanishNames()
    {
        Call call = await Call.Of("calc", "detención", "velocidad = 79 mph", "deceleración = 0.9 m/s^2", "--language", "es");
        Assert.Contains("distancia       692.9 m (2 273 ft), hasta que se detiene", call.Output, StringComparison.Ordinal);
        Assert.Contains("Fuente: ecuaciones del movimiento", call.Output, StringComparison.Ordinal);
        Call json = await Call.Of([.. s_stop, "--language", "es", "--json"]);
        Assert.Contains("\"calculation\": \"stopping\"", json.Output, StringComparison.Ordinal);
        Assert.Contains("distance = 79 mph", json.Output, StringComparison.Ordinal);
    }
}
