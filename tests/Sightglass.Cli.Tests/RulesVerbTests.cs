using System.Text.Json;

namespace Sightglass.Cli.Tests;

public sealed class RulesVerbTests
{
    private const double Psi = 6894.757293168361;

    /// <summary>A reservoir that begins at 140 psi and is let down through a cock; with a hole in one situation.</summary>
    private const string Book = """
        book: Small air
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { panel: { x: 5 m, y: 2.4 m } }
        items:
          reservoir: { kind: reservoir, volume: 850 L, start pressure: 84 psi }
          governor: { kind: governor, senses: reservoir, cuts in: 130 psi, cuts out: 140 psi }
          motor: { kind: switch, usual: "off", who: [hand], places: [panel], for: Drives the compressor., normal: On. }
          compressor: { kind: compressor, to: reservoir, displacement: 80 ft^3/min, driven by: motor, loaded by: governor }
          safety valve: { kind: safety valve, from: reservoir, diameter: 20 mm, opens at: 150 psi }
        measures:
          main reservoir working pressure: 140 psi
          main reservoir safety valve setting: opens at of safety valve
          governor cut-in: cuts in of governor
          governor cut-out: cuts out of governor
          greatest brake pipe pressure: 110 psi
          main reservoir pressure: pressure of reservoir
          main reservoir is fed: flow of compressor > 1 L/min
        situations:
          tight: { text: No leak. }
          small hole: { text: A hole of one millimetre., faults: [ { fault: leak, on: reservoir, diameter: 1 mm } ] }
          large hole: { text: A hole of three millimetres., faults: [ { fault: leak, on: reservoir, diameter: 3 mm } ] }
          fed: { text: The compressor runs., start: { motor: "on" } }

        """;

    [Fact]
    public async Task Rules_OfABook_SaysEachRowAndThatLocalRulesDecide()
    {
        using ScratchFolder scratch = new();
        Call call = await Of(scratch, Book);
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("kept      229.49(a)(1)      Main reservoir safety valve  150 psi; at most 155 psi", Plain(call.Output), StringComparison.Ordinal);
        Assert.Contains("Measured in a run, because it changes as the machine runs: main reservoir pressure.", call.Output, StringComparison.Ordinal);
        Assert.EndsWith("Local rules, the maker's manual and qualified people decide.\n", call.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.All(call.Output.Split('\n'), l => Assert.InRange(l.Length, 0, 140));
    }

    [Fact]
    public async Task Rules_OneIsNotKept_ExitIsNo()
    {
        using ScratchFolder scratch = new();
        Call call = await Of(scratch, Book.Replace("opens at: 150 psi", "opens at: 156 psi", StringComparison.Ordinal));
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("NOT KEPT  229.49(a)(1)      Main reservoir safety valve  156 psi; at most 155 psi", Plain(call.Output), StringComparison.Ordinal);
    }

    /// <summary>238.231(m), read in the edition of 2015: up to two cars in direct release at the rear. The demo's night mail has one at the front; with all cars set alike nothing is mixed.</summary>
    [Theory]
    [InlineData("night mail as it was made up", ExitCode.No, "NOT KEPT. As it stood at 0:00:00.")]
    [InlineData("night mail, charged", ExitCode.Good, "kept. Held at every moment from 0:00:00 to 0:00:05.")]
    [InlineData("last coach set for another train", ExitCode.Good, "kept. Held at every moment from 0:00:00 to 0:00:05.")]
    public async Task Run_OfATrain_HoldsItsMixedRelease(string situation, int exit, string told)
    {
        Call call = await Call.Of(["rules", "books/curlew", "--run", situation, "--for", "5 s", "--show", "238.231(m)"]);
        Assert.Equal(exit, call.Exit);
        Assert.Contains(told, call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Show_AParagraph_TellsConditionMethodEditionAndAllBelowIt()
    {
        using ScratchFolder scratch = new();
        Call one = await Of(scratch, Book, "--show", "229.59(a)");
        Assert.Contains("After the pressure has been reduced to 60 % of the greatest pressure.", one.Output, StringComparison.Ordinal);
        Assert.Contains("2015 annual edition", one.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("229.59(b)", one.Output, StringComparison.Ordinal);
        Call below = await Of(scratch, Book, "--show", "229.49");
        Assert.Equal(5, below.Output.Split('\n').Count(l => l.StartsWith("229.49", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("No row is named `229.94(c)`", "--show", "229.94(c)")]
    [InlineData("There is no set of rules `us-cfr94`; did you mean `us-cfr49`?", "--set", "us-cfr94")]
    [InlineData("The book has no situation `tihgt`; did you mean `tight`?", "--run", "tihgt")]
    public async Task Rules_ANameThatIsNotThere_IsWrongUse(string told, params string[] arguments)
    {
        using ScratchFolder scratch = new();
        Call call = await Of(scratch, Book, arguments);
        Assert.Equal(ExitCode.WrongUse, call.Exit);
        Assert.Contains(told, call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_WithErrors_IsRefusedWithPlaces()
    {
        using ScratchFolder scratch = new();
        string file = scratch.Write("set/rules.yaml", "rules: A\nedition: B\nrows:\n  1: { title: T, limit: L, confidence: sure }\n");
        Call call = await Of(scratch, Book, "--set", Path.GetDirectoryName(file)!);
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("rules.yaml:4:40: B035: `sure` is not possible for `confidence`; possible are: `high`, `medium`", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_Another_IsHeldInItsPlace()
    {
        using ScratchFolder scratch = new();
        string file = scratch.Write("set/rules.yaml", """
            rules: Harbour rules
            edition: first
            quantities: { main reservoir working pressure: { shown in: bar } }
            rows:
              H 1: { title: Working pressure, limit: 8 bar., confidence: high, value: main reservoir working pressure, at most: 8 bar }
            """);
        Call call = await Of(scratch, Book, "--set", Path.GetDirectoryName(file)!);
        Assert.Equal(ExitCode.No, call.Exit);
        Assert.Contains("NOT KEPT  H 1  Working pressure  9.653 bar; at most 8 bar", Plain(call.Output), StringComparison.Ordinal);
        Assert.Contains("R021 (note): no rule asks for `governor cut-in`", call.Error, StringComparison.Ordinal);
    }

    /// <summary>
    /// The fall over three minutes of a reservoir with a sharp-edged hole: p = p₀·exp(−C·A·ψ·R·T/V·t) while the flow is choked (isothermal choked blow-down, A2_02; C 0.62 as the
    /// kind has it), ψ = √(γ/(R·T))·(2/(γ+1))^((γ+1)/(2(γ−1))). The rule's limit is 3 psi a minute: 229.59(a), US CFR Title 49, 2015 annual edition.
    /// </summary>
    [Theory]
    [InlineData("tight", 0, "kept", ExitCode.Good)]
    [InlineData("small hole", 1, "kept", ExitCode.Good)]
    [InlineData("large hole", 3, "not kept", ExitCode.No)]
    public async Task CFR053_Run_WithAHole_MeasuresTheFallOfTheClosedForm(string situation, double millimetres, string verdict, int exit)
    {
        using ScratchFolder scratch = new();
        Call call = await Of(scratch, Book, "--run", situation, "--show", "229.59(a)", "--json");
        Assert.Equal(exit, call.Exit);
        JsonElement row = JsonDocument.Parse(call.Output).RootElement.GetProperty("sets")[0].GetProperty("rows")[0];
        Assert.Equal(verdict, row.GetProperty("verdict").GetString());
        const double Gas = 287.05;
        const double Temperature = 293.15;
        double area = Math.PI / 4 * millimetres * millimetres * 1e-6;
        double choked = Math.Sqrt(1.4 / (Gas * Temperature)) * Math.Pow(2 / 2.4, 3);
        double start = (84 * Psi) + 101_325;
        double fall = start * (1 - Math.Exp(-0.62 * area * choked * Gas * Temperature / 0.850 * 180)) / 3 / Psi;
        Assert.Equal(fall, row.GetProperty("value").GetDouble(), (0.01 * fall) + 1e-9);
    }

    [Fact]
    public async Task CFR053_Run_WhileTheCompressorFeeds_CannotBeTold()
    {
        using ScratchFolder scratch = new();
        Call call = await Of(scratch, Book, "--run", "fed", "--show", "229.59(a)");
        Assert.Equal(ExitCode.Good, call.Exit);
        Assert.Contains("cannot be told. In this run the test never began.", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rules_TheDemoByItsName_IsFound() => Assert.StartsWith("Curlew, held against", (await Call.Of("rules", "curlew")).Output, StringComparison.Ordinal);

    private static Task<Call> Of(ScratchFolder scratch, string book, params string[] arguments)
    {
        scratch.Write("book/book.yaml", book);
        return Call.Of(["rules", scratch.At("book"), .. arguments]);
    }

    private static string Plain(string text) => text.Replace('\u202F', ' ');
}
