using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Answers that a good model gives by itself (common practice, no source, unless said).</summary>
public sealed class TradeAirTests
{
    private const double Psi = 6894.757293;
    private const double CubicFoot = 0.028316846592;

    private const string Head = """
        book: Trade
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }

        """;

    private static string Cut(string vent) => Head + $$"""
        items:
          main reservoir: { kind: reservoir, volume: 1 m^3, start pressure: 140 psi }
          brake handle: { kind: handle, positions: [release, full service], who: [hand], places: [cab] }
          handle valve: { kind: regulating valve, from: main reservoir, to: brake pipe, diameter: 4 mm, exhaust diameter: 4 mm, set by: brake handle, pressures: { release: 110 psi, full service: 84 psi } }
          brake pipe: { kind: air line, length: 20 m, diameter: 32 mm, start pressure: 110 psi }
          auxiliary reservoir: { kind: reservoir, volume: 60 L, start pressure: 110 psi }
          control valve: { kind: control valve, from: auxiliary reservoir, to: cylinder line, senses: brake pipe, diameter: 6 mm, exhaust diameter: 6 mm }
          cylinder line: { kind: air line, volume: 1 L }
          cutout cock: { kind: cutout cock, from: cylinder line, to: cylinder, diameter: 12 mm{{vent}}, who: [hand], places: [cab] }
          cylinder: { kind: brake cylinder, diameter: 200 mm, travel: 100 mm }
        situations: { charged: { text: Charged. } }

        """;

    /// <summary>Isolated by a non-venting cock while applied it keeps its brake, also when everything else releases; a venting cock lets it off.</summary>
    [Theory]
    [InlineData("", true)]
    [InlineData(", vent diameter: 5 mm", false)]
    public void Trade_08_CylinderCutOutWhileApplied_KeepsItsBrakeUnlessTheCockVents(string vent, bool keeps)
    {
        using Rig rig = new(Rig.Compile(Cut(vent)), "charged");
        rig.Do(5, "brake handle", "full service");
        double applied = rig.At(60, "pressure of cylinder");
        Assert.True(applied > 40 * Psi);
        rig.Do(60, "cutout cock", "closed");
        rig.Do(70, "brake handle", "release");
        double left = rig.At(600, "pressure of cylinder");
        Assert.Equal(keeps ? applied : 0, left, 0.6 * Psi);
        Assert.Equal(0, rig.At(600, "pressure of cylinder line"), 0.6 * Psi);
    }

    private const string TwoUnits = Head + """
        items:
          leading main reservoir: { kind: reservoir, volume: 10 m^3, start pressure: 140 psi }
          leading handle: { kind: handle, positions: [release, reduced], who: [hand], places: [cab] }
          leading equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 110 psi }
          leading handle valve: { kind: regulating valve, from: leading main reservoir, to: leading equalising reservoir, diameter: 2 mm, exhaust diameter: 2 mm, set by: leading handle, pressures: { release: 110 psi, reduced: 90 psi } }
          leading cut-out valve: { kind: handle, positions: [in, out], who: [hand], places: [cab] }
          leading relay: { kind: relay valve, from: leading main reservoir, to: brake pipe, follows: leading equalising reservoir, diameter: 10 mm, exhaust diameter: 6 mm, cut out by: leading cut-out valve }
          trailing main reservoir: { kind: reservoir, volume: 10 m^3, start pressure: 140 psi }
          trailing equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 110 psi }
          trailing cut-out valve: { kind: handle, positions: [in, out], usual: out, who: [hand], places: [cab] }
          trailing relay: { kind: relay valve, from: trailing main reservoir, to: brake pipe, follows: trailing equalising reservoir, diameter: 10 mm, exhaust diameter: 6 mm, cut out by: trailing cut-out valve }
          brake pipe: { kind: air line, length: 200 m, diameter: 32 mm, start pressure: 110 psi }
        situations:
          leaking: { text: A brake pipe with a leak., faults: [ { fault: leak, on: brake pipe, diameter: 2 mm } ] }

        """;

    /// <summary>
    /// The trailing unit cut out: the reduction takes, and with the leading unit cut out as well the leak shows in a minute. Left cut in, it recharges what the leading unit lets out and feeds
    /// the leak: the train brake is useless and the leakage test perfect. Main reservoirs so large that nothing need fill them.
    /// </summary>
    [Theory]
    [InlineData("out", 88, 92, true)]
    [InlineData("in", 96, 110, false)]
    public void Trade_12_TrailingUnitLeftCutIn_RechargesAndHidesTheLeak(string trailing, double least, double most, bool shows)
    {
        using Rig rig = new(Rig.Compile(TwoUnits), "leaking");
        rig.Do(1, "trailing cut-out valve", trailing);
        rig.Do(5, "leading handle", "reduced");
        Assert.InRange(rig.At(90, "pressure of brake pipe") / Psi, least, most);
        rig.Do(90, "leading cut-out valve", "out");
        double first = rig.At(150, "pressure of brake pipe");
        double second = rig.At(210, "pressure of brake pipe");
        Assert.Equal(shows, first - second > 5 * Psi);
        Assert.True(shows || Math.Abs(second - (110 * Psi)) < Psi, $"{second / Psi} psi after {first / Psi}");
    }

    private const string Pair = Head + """
        items:
          own reservoir: { kind: reservoir, volume: 900 L, start pressure: 84 psi }
          own end cock: { kind: hand valve, from: own reservoir, to: pipe between, diameter: 20 mm, who: [hand], places: [cab] }
          pipe between: { kind: air line, length: 2 m, diameter: 25 mm, start pressure: 84 psi }
          other end cock: { kind: hand valve, from: pipe between, to: other reservoir, diameter: 20 mm, usual: open, who: [hand], places: [cab] }
          other reservoir: { kind: reservoir, volume: 900 L, start pressure: 84 psi }
          other governor: { kind: governor, senses: other reservoir, cuts in: 84 psi, cuts out: 86 psi }
          other compressor: { kind: compressor, to: other reservoir, displacement: 120 ft^3/min, loaded by: other governor }
        situations:
          leaking: { text: "Its own compressor stopped, at 60 % of 140 psi.", faults: [ { fault: leak, on: own reservoir, diameter: 2.5 mm } ] }

        """;

    /// <summary>
    /// The leakage test of a main reservoir begins at 60 % of its greatest pressure and allows an average of 3 psi a minute for three minutes (49 CFR 229.59(a), 2015, read). Alone, the leak shows; coupled, the other unit's compressor feeds the
    /// pipe between and the test passes.
    /// </summary>
    [Theory]
    [InlineData("closed", true)]
    [InlineData("open", false)]
    public void Trade_13_LeakageTestOfAPair_FedByTheOtherUnit_PassesFalsely(string cock, bool shows)
    {
        using Rig rig = new(Rig.Compile(Pair), "leaking");
        rig.Do(0, "own end cock", cock);
        double fallen = rig.At(30, "pressure of own reservoir") - rig.At(210, "pressure of own reservoir");
        Assert.Equal(shows, fallen > 9 * Psi);
        Assert.True(shows || fallen < 3 * Psi, $"{fallen / Psi} psi in three minutes");
    }

    private const string Drain = Head + """
        items:
          reservoir: { kind: reservoir, volume: 900 L, start pressure: 130 psi }
          governor: { kind: governor, senses: reservoir, cuts in: 130 psi, cuts out: 140 psi }
          compressor: { kind: compressor, to: reservoir, displacement: 80 ft^3/min, clearance: 0 %, loaded by: governor }
          drain: { kind: drain cock, from: reservoir, to: outside, diameter: 6 mm, discharge coefficient: 0.65, who: [hand], places: [cab], for: Lets water out., normal: Shut. }
        situations:
          standing: { text: The drain works. }
          frozen open: { text: "Frozen open.", start: { drain: open }, faults: [ { fault: stuck, on: drain } ] }

        """;

    /// <summary>A drain of 6 mm frozen open passes 76 scfm at 130 psi: an idling compressor of 80 cfm does not unload within a quarter of an hour, where it took half a minute.</summary>
    [Fact]
    public void Trade_14_DrainFrozenOpen_CompressorDoesNotUnload()
    {
        using Rig frozen = new(Rig.Compile(Drain), "frozen open");
        Assert.Equal(76, frozen.At(1, "flow of drain") / CubicFoot * 60, 2.0);
        Assert.Equal(1, frozen.At(900, "told of governor"));
        frozen.Do(900, "drain", "closed");
        Assert.Equal(1, frozen.At(960, "told of governor"));
        using Rig good = new(Rig.Compile(Drain), "standing");
        Assert.Equal(0, good.At(30, "told of governor"));
    }
}
