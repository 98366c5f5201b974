using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Electric;

/// <summary>Sources at several speeds, inverters, and loads that start. Where no other source is named: common practice, no source.</summary>
public sealed class SourceAndLoadTests
{
    /// <summary>A source of two speeds, with a load that only the faster one carries.</summary>
    private const string TwoSpeeds = """
        book: Two speeds
        length: 20 m
        places: { cab: { x: 5 m, y: 0 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations: { fast: { start: { mode: feed, load switch: "on" } } }
        items:
          mode: { kind: handle, positions: [through, standby, feed], who: [hand], places: [cab] }
          load switch: { kind: switch, who: [hand], places: [cab] }
          bars: { kind: busbar }
          source: { kind: three-phase source, to: bars, power: 500 kW, inner impedance: 0.001 %, droop: 2 %, set by: mode, power in position: { through: 500 kW, standby: 160 kW, feed: 500 kW }, frequency in position: { through: 60 Hz, standby: 60 Hz, feed: 60 Hz }, gives way in: 4 s }
          load: { kind: three-phase load, from: bars, power: 200 kW, draws while: on of load switch }
        """;

    /// <summary>An alternator of 4 % and an inverter of the same power, each with a breaker and a short behind it.</summary>
    private const string Shorts = """
        book: Shorts
        length: 20 m
        places: { cab: { x: 5 m, y: 0 m } }
        roles: { hand: { walks: 1.3 m/s } }
        situations: { "on": { } }
        items:
          bars: { kind: busbar }
          far bars: { kind: busbar }
          source: { kind: three-phase source, to: bars, power: 100 kW, droop: 5 %, inverter: INVERTER }
          breaker: { kind: three-phase breaker, from: bars, to: far bars, rating: 130 A, who: [hand], places: [cab] }
          load: { kind: three-phase load, from: far bars, power: 50 kW, keeps: impedance }
        """;

    /// <summary>Standby keeps the frequency by its gear and has less power; the overload takes speed away by its share over the power, 1/e of the way left after each time constant. Source: first-order lag (any text of control).</summary>
    [Fact]
    public void Source_SetToStandby_SameFrequencyAndLessPower()
    {
        using Rig rig = new(Rig.Compile(TwoSpeeds), "fast");
        Assert.Equal(0.4, rig.At(1, "loading of source"), 1e-3);
        Assert.Equal(60 * (1 - (0.02 * 0.4)), rig.At(2, "frequency of source"), 1e-2);
        Assert.True(rig.At(3, "overloaded of source") < 0);
        rig.Do(10, "load switch", "off");
        rig.Do(11, "mode", "standby");
        Assert.Equal(60, rig.At(12, "frequency of source"), 1e-5);
        rig.Do(20, "load switch", "on");
        Assert.Equal(1.25, rig.At(20.1, "loading of source"), 1e-3);
        Assert.True(rig.At(20.2, "overloaded of source") >= 0);
        double drooped = 60 * (1 - (0.02 * 1.25));
        Assert.Equal(drooped * (1 - (0.25 * (1 - Math.Exp(-1)))), rig.At(24, "frequency of source"), 0.01);
        Assert.Equal(drooped * 0.75, rig.At(80, "frequency of source"), 0.01);
        rig.Do(100, "load switch", "off");
        Assert.Equal(60, rig.At(160, "frequency of source"), 1e-3);
    }

    [Fact]
    public void Source_FrequencyByPosition_IsThatOfItsPosition()
    {
        using Rig rig = new(Rig.Compile(TwoSpeeds.Replace("standby: 60 Hz", "standby: 50 Hz", StringComparison.Ordinal)), "fast");
        rig.Do(1, "load switch", "off");
        rig.Do(2, "mode", "standby");
        Assert.Equal(50, rig.At(3, "frequency of source"), 1e-5);
    }

    /// <summary>
    /// A short behind a machine of 4 % draws 25 times its current, and the magnet opens; behind an inverter it draws one and a half times, and nothing opens. Source of the rated current: P = √3·U·I; of the limit: inverters give 1.1 to 2
    /// times their rated current into a fault (papers on fault currents of inverters, from memory).
    /// </summary>
    [Theory]
    [InlineData("no", true)]
    [InlineData("yes", false)]
    public void Breaker_ShortBehindIt_TripsByAMachineAndNotByAnInverter(string inverter, bool trips)
    {
        using Rig rig = new(Rig.Compile(Shorts.Replace("INVERTER", $"\"{inverter}\"", StringComparison.Ordinal)), "on");
        Assert.True(rig.At(1, "limited of source") < 0);
        Assert.InRange(rig.At(2, "voltage of bars"), 465, 481);
        rig.Break(3, "far bars", "shorted", ("resistance", 0.005));
        Assert.Equal(trips, rig.At(60, "tripped of breaker") >= 0);
        if (!trips)
        {
            const double rated = 100e3 / (1.7320508 * 480);
            Assert.Equal(1.5 * rated, rig.At(61, "current of source"), 0.01 * rated);
            Assert.True(rig.At(62, "limited of source") >= 0);
            Assert.True(rig.At(63, "voltage of bars") < 400);
            Assert.Equal(60, rig.At(64, "frequency of source"), 1e-9);
        }
    }

    /// <summary>Into impedances alone a limited source gives exactly its limit, and its voltage falls as the ratio of the currents: a load of three times the rated current leaves half of the voltage at one and a half times. Source: Ohm's law.</summary>
    [Fact]
    public void Inverter_ThreeTimesItsLoad_HalfOfItsVoltage()
    {
        string book = Shorts.Replace("INVERTER", "\"yes\", inner impedance: 0.001 %", StringComparison.Ordinal).Replace("power: 50 kW", "power: 300 kW, power factor: 100 %", StringComparison.Ordinal).Replace("130 A", "1000 A", StringComparison.Ordinal);
        using Rig rig = new(Rig.Compile(book), "on");
        Assert.Equal(240, rig.At(1, "voltage of bars"), 0.5);
    }

    /// <summary>Six cars of 60 A that start with six times that for six seconds, behind a breaker of 400 A: all at once are 5.4 times its rating and trip it; one after another, each with its own delay, never more than twice, which it stands for a minute.</summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(8, false)]
    public void Cars_ComingBack_TripAllAtOnceAndNotOneAfterAnother(int apart, bool trips)
    {
        string cars = string.Concat(Enumerable.Range(1, 6).Select(c => $"""

              car {c}: {"{"} kind: three-phase load, from: line, power: 45 kW, power factor: 90 %, inrush: 6, inrush lasts: 6 s, inrush power factor: 35 %, comes back after: {1 + (apart * (c - 1))} s {"}"}
            """));
        using Rig rig = new(Rig.Compile($$"""
            book: Coming back
            length: 20 m
            places: { cab: { x: 5 m, y: 0 m } }
            roles: { hand: { walks: 1.3 m/s } }
            situations: { "on": { start: { main: "on" } } }
            items:
              main: { kind: switch, who: [hand], places: [cab] }
              bars: { kind: busbar }
              line: { kind: busbar }
              source: { kind: three-phase source, to: bars, power: 3 MW, inner impedance: 1 %, driven by: main }
              breaker: { kind: three-phase breaker, from: bars, to: line, rating: 400 A, who: [hand], places: [cab] }{{cars}}
            """), "on");
        Assert.InRange(rig.At(1, "current of breaker"), 350, 375);
        Assert.True(rig.At(2, "starting of car 1") < 0, "what has voltage at the start of a run has had it before");
        rig.Do(100, "main", "off");
        rig.Do(200, "main", "on");
        Assert.Equal(0, rig.At(200.5, "consumption of car 1"), 1e-6);
        Assert.True(rig.At(201.5, "starting of car 1") >= 0);
        Assert.Equal(trips, rig.At(300, "tripped of breaker") >= 0);
        if (!trips)
        {
            Assert.InRange(rig.At(301, "current of breaker"), 350, 375);
            Assert.True(rig.At(302, "working of car 6") >= 0);
        }
    }

    /// <summary>A gap that contactors ride through starts nothing anew.</summary>
    [Fact]
    public void Load_ShortGap_GoesOn()
    {
        using Rig rig = new(Rig.Compile("""
            book: A gap
            length: 20 m
            places: { cab: { x: 5 m, y: 0 m } }
            roles: { hand: { walks: 1.3 m/s } }
            situations: { "on": { start: { main: "on" } } }
            items:
              main: { kind: switch, who: [hand], places: [cab] }
              bars: { kind: busbar }
              source: { kind: three-phase source, to: bars, power: 1 MW, driven by: main }
              car: { kind: three-phase load, from: bars, power: 45 kW, inrush: 6, comes back after: 10 s }
            """), "on");
        rig.Do(10, "main", "off");
        rig.Do(10.05, "main", "on");
        Assert.True(rig.At(10.06, "working of car") >= 0);
        rig.Do(20, "main", "off");
        rig.Do(20.5, "main", "on");
        Assert.True(rig.At(25, "working of car") < 0);
        Assert.True(rig.At(31, "starting of car") >= 0);
        Assert.True(rig.At(36, "starting of car") < 0);
        Assert.True(rig.At(37, "working of car") >= 0);
    }

    /// <summary>Sixty loads that come back within the same second are many switches that fire once or twice, not one that never rests: by arithmetic.</summary>
    [Fact]
    public void Loads_ManyComeBackAtOnce_AllRun()
    {
        const int Many = 60;
        string loads = string.Concat(Enumerable.Range(1, Many).Select(n => $"""

              load {n}: {"{"} kind: three-phase load, from: bars, power: 5 kW, comes back after: 10 s {"}"}
            """));
        using Rig rig = new(Rig.Compile($$"""
            book: Many loads
            length: 20 m
            places: { cab: { x: 5 m, y: 0 m } }
            roles: { hand: { walks: 1.3 m/s } }
            situations: { "on": { start: { main: "on" } } }
            items:
              main: { kind: switch, who: [hand], places: [cab] }
              bars: { kind: busbar }
              source: { kind: three-phase source, to: bars, power: 1 MW, driven by: main }{{loads}}
            """), "on");
        rig.Do(10, "main", "off");
        rig.Do(20, "main", "on");
        Assert.True(rig.At(25, "working of load 1") < 0);
        Assert.All(Enumerable.Range(1, Many), n => Assert.True(rig.At(35 + (n / 100.0), $"working of load {n}") >= 0));
        Assert.InRange(rig.At(40, "output of source"), Many * 5e3, 1.01 * Many * 5e3);
    }
}
