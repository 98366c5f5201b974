using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>A dryer of two towers, a drain with ice, two pipes of which the higher pressure wins.</summary>
public sealed class DryerTests
{
    private const double Psi = 6894.757293;
    private const double CubicFootPerMinute = 0.028316846592 / 60;

    private const string Machine = """
        book: Dryer
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          governor: { kind: governor, senses: second, cuts in: 130 psi, cuts out: 140 psi }
          compressor: { kind: compressor, to: first, displacement: 4 m^3/min, loaded by: governor }
          first: { kind: reservoir, volume: 400 L, start pressure: 135 psi }
          dryer: { kind: air dryer, from: first, to: second, flow: 4 m^3/min, drop: 3 psi, purge diameter: 2 mm, changes every: 60 s, wet after: 1 h, works with: governor }
          second: { kind: reservoir, volume: 400 L, start pressure: 135 psi }
          use: { kind: hand valve, from: second, to: outside, diameter: 8 mm, usual: open, who: [hand], places: [cab] }
          drain: { kind: drain cock, from: first, to: outside, diameter: 6 mm, who: [hand], places: [cab] }
          left: { kind: reservoir, volume: 10 L, start pressure: 60 psi }
          right: { kind: reservoir, volume: 10 L, start pressure: 30 psi }
          shuttle: { kind: double check valve, from: left, or from: right, to: line, diameter: 5 mm }
          line: { kind: air line, volume: 1 L }
          left exhaust: { kind: hand valve, from: left, to: outside, diameter: 3 mm, who: [hand], places: [cab] }
        situations:
          normal: { text: It works. }
          stuck: { text: On one tower., faults: [ { fault: stuck, on: dryer } ] }
          blows: { text: Its purge stays open., start: { use: closed }, faults: [ { fault: purge stays open, on: dryer, diameter: 6 mm } ] }
          ice: { text: Frozen shut., faults: [ { fault: frozen shut, on: drain } ] }
          open: { text: Frozen open., faults: [ { fault: frozen open, on: drain, share: 100 % } ] }

        """;

    /// <summary>The towers take turns, a minute of work each (common practice, no source); while the compressor is unloaded neither blows.</summary>
    [Fact]
    public void Dryer_CompressorLoaded_ChangesEachMinuteAndBlows()
    {
        using Rig rig = new(Rig.Compile(Machine), "normal");
        Assert.Equal(1, rig.At(40, "told of governor"));
        Assert.True(rig.At(40, "purge of dryer") > 0);
        int changes = 0;
        for (double t = 41, last = rig.At(41, "second tower of dryer"); t < 641; t++)
        {
            double now = rig.At(t, "second tower of dryer");
            changes += now * last < 0 ? 1 : 0;
            last = now;
        }

        Assert.InRange(changes, 9, 10);
        Assert.Equal(0, rig.At(641, "wet of dryer"));
        rig.Do(641, "use", "closed");
        Assert.Equal(0, rig.At(900, "told of governor"));
        Assert.Equal(0, rig.At(900, "purge of dryer"));
    }

    /// <summary>On one tower for an hour: 1 − 1/e of the water passes.</summary>
    [Fact]
    public void Dryer_Stuck_GetsWet()
    {
        using Rig rig = new(Rig.Compile(Machine), "stuck");
        Assert.Equal(1 - Math.Exp(-1), rig.At(3600, "wet of dryer"), 1e-3);
        Assert.True(rig.At(3600, "second tower of dryer") < 0);
    }

    /// <summary>76 scfm through 6 mm at 130 psi with Cd 0.65 (trade scenario 14, computed): 72.5 with 0.62, as a purge that stays open and as a drain frozen open.</summary>
    [Fact]
    public void A6mmHole_At130Psi_Passes72Scfm()
    {
        using Rig rig = new(Rig.Compile(Machine), "blows");
        double absolute = (rig.At(100, "pressure of second") / Psi) + 14.695949;
        Assert.Equal(72.5 * absolute / 144.695949, rig.At(100, "purge of dryer") / CubicFootPerMinute, 1.5);
        using Rig other = new(Rig.Compile(Machine), "open");
        absolute = (other.At(100, "pressure of first") / Psi) + 14.695949;
        Assert.Equal(72.5 * absolute / 144.695949, other.At(100, "flow of drain") / CubicFootPerMinute, 1.5);
    }

    /// <summary>A drain opened and nothing comes: frozen, not dry (trade scenario 14).</summary>
    [Fact]
    public void Drain_FrozenShut_OpenedLetsNothingOut()
    {
        using Rig rig = new(Rig.Compile(Machine), "ice");
        rig.Do(10, "drain", "open");
        Assert.Equal(0, rig.At(11, "flow of drain"));
    }

    /// <summary>The line gets the higher pressure and goes down with it until the other one is higher (common practice, no source).</summary>
    [Fact]
    public void DoubleCheck_HigherFalls_OtherTakesOver()
    {
        using Rig rig = new(Rig.Compile(Machine), "normal");
        double start = (60 + 14.695949) * 10 / 11;
        Assert.Equal(start + (14.695949 / 11) - 14.695949, rig.At(60, "pressure of line") / Psi, 0.3);
        Assert.Equal(30, rig.At(60, "pressure of right") / Psi, 0.01);
        rig.Do(60, "left exhaust", "open");
        Assert.Equal(0, rig.At(200, "pressure of left") / Psi, 0.1);
        Assert.Equal(rig.At(200, "pressure of right"), rig.At(200, "pressure of line"), 0.2 * Psi);
        Assert.InRange(rig.At(200, "pressure of line") / Psi, 27, 31);
    }
}
