using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Plant.Calculators;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Water that a compressor's air brings and that falls out where it cools.</summary>
public sealed class CondensateTests
{
    private const double Atmosphere = 101_325;
    private const double Litre = 1e-3;

    private const string Machine = """
        book: Water
        length: 20 m
        roles: { hand: { walks: 1.3 m/s } }
        places: { cab: { x: 5 m, y: 2.4 m } }
        items:
          compressor: { kind: compressor, to: reservoir, displacement: 4 m^3/min, clearance: 0 %, driven by: running }
          running: { kind: switch, usual: "on", who: [hand], places: [cab] }
          reservoir: { kind: reservoir, volume: 800 L, start pressure: 120 psi, collects water of: compressor, cooled by: cooler, drained by: [drain], humidity: 80 %, freezes drains at: 0.2 L }
          cooler: { kind: air cooler }
          relief: { kind: safety valve, from: reservoir, opens at: 120 psi, blow-down: 2 psi, diameter: 30 mm }
          drain: { kind: drain cock, from: reservoir, to: outside, diameter: 6 mm, who: [hand], places: [cab] }
        situations:
          summer: { text: Hot and moist., start: { ambient temperature: 30 degC } }
          frost: { text: Frost., start: { ambient temperature: -10 degC } }
          late: { text: Much has gathered already., start: { ambient temperature: -10 degC, water of reservoir: 0.19 L } }
          iced: { text: Its drain is ice., start: { ambient temperature: 30 degC }, faults: [ { fault: frozen shut, on: drain } ] }

        """;

    /// <summary>Saturation pressures of steam tables, Pa (IAPWS, from memory); the Magnus form keeps to them within 0.4 %.</summary>
    [Theory]
    [InlineData(0.01, 611.66)]
    [InlineData(10, 1228.2)]
    [InlineData(20, 2339.3)]
    [InlineData(30, 4247.0)]
    [InlineData(40, 7384.9)]
    [InlineData(50, 12352)]
    public void SaturationPressure_Celsius_AsInSteamTables(double celsius, double pascal) =>
        Assert.Equal(1, MoistAir.SaturationPressure(celsius + 273.15) / pascal, 0.004);

    /// <summary>
    /// By hand: 4 m³/min of air of 20 °C weigh 4.816 kg; at 30 °C and 80 % each kg brings 0.622·0.8·4247/(101325 − 3398) = 21.6 g, at 120 psi over the atmosphere (928.7 kPa) it keeps
    /// 0.622·4247/(928700 − 4247) = 2.86 g, so 90 g fall out in a minute and 5.4 L in an hour; in frost of −10 °C (2.86 hPa over water) 6 g a minute at most.
    /// </summary>
    [Theory]
    [InlineData("summer", 303.15, 5.4)]
    [InlineData("frost", 263.15, 0.36)]
    public void Water_CompressorLoadedForAnHour_IsWhatItsAirCannotKeep(string situation, double temperature, double litres)
    {
        using Rig rig = new(Rig.Compile(Machine), situation);
        double first = rig.At(600, "pressure of reservoir") + Atmosphere;
        double water = rig.At(3600, "water of reservoir") / Litre;
        double e = MoistAir.SaturationPressure(temperature);
        double expected = 4.0 / 60 * 3600 * 1.2041 * (MoistAir.Ratio(0.8 * e, Atmosphere) - MoistAir.Ratio(e, first));
        Assert.Equal(1, water / expected, 0.01);
        Assert.InRange(water, litres * 0.9, litres * 1.1);
    }

    /// <summary>By hand, for air that comes 20 K too warm: it keeps 0.622·12352/(928700 − 12352) = 8.4 g of the 21.6 g, so 13.2 g of each kg fall out, 3.8 L in an hour; the rest goes on as vapour. 45 K too warm it keeps all.</summary>
    [Theory]
    [InlineData(20, 3.8)]
    [InlineData(45, 0)]
    public void Water_CoolerClogged_GoesOnAsVapour(double warmer, double litres)
    {
        using Rig rig = new(Rig.Compile(Machine), "summer");
        rig.Break(0, "cooler", "clogged", ("warmer", warmer));
        double first = rig.At(600, "pressure of reservoir") + Atmosphere;
        double water = rig.At(3600, "water of reservoir") / Litre;
        double expected = 4.0 / 60 * 3600 * 1.2041 * Math.Max(0, MoistAir.Ratio(0.8 * MoistAir.SaturationPressure(303.15), Atmosphere) - MoistAir.Ratio(MoistAir.SaturationPressure(303.15 + warmer), first));
        Assert.Equal(expected, water, 0.05);
        Assert.Equal(litres, water, 0.2);
    }

    /// <summary>In frost a drain that is not opened in time freezes shut; one that is opened in time does not, and above 0 °C none does (common practice, no source; the amount is the book's).</summary>
    [Theory]
    [InlineData("late", -1, true)]
    [InlineData("late", 30, false)]
    [InlineData("summer", -1, false)]
    public void Drain_WaterGathersInFrost_FreezesShut(string situation, double drained, bool frozen)
    {
        using Rig rig = new(Rig.Compile(Machine), situation);
        if (drained > 0)
        {
            rig.Do(drained, "drain", "open");
            rig.Do(drained + 15, "drain", "closed");
        }

        rig.Do(900, "drain", "open");
        Assert.Equal(frozen, rig.At(901, "flow of drain") == 0);
        Assert.Equal(frozen, rig.World.Journal!.Any(j => j.Text == "Drain freezes."));
    }

    /// <summary>A drain of a few seconds blows it out; a frozen one does not, and a compressor that stands brings none.</summary>
    [Fact]
    public void Water_DrainOpened_IsGoneUnlessFrozen()
    {
        using Rig open = new(Rig.Compile(Machine), "summer");
        using Rig frozen = new(Rig.Compile(Machine), "iced");
        foreach (Rig rig in (Rig[])[open, frozen])
        {
            rig.Do(3600, "running", "off");
            rig.Do(3700, "drain", "open");
            rig.Do(3715, "drain", "closed");
            Assert.Equal(rig.At(3601, "water of reservoir"), rig.At(3690, "water of reservoir"), 1e-9);
        }

        Assert.True(open.At(3720, "water of reservoir") < 0.01 * Litre);
        Assert.True(frozen.At(3720, "water of reservoir") > 5 * Litre);
    }

    [Fact]
    public void Compile_CooledByWhatIsNoCooler_SaysWhatWouldBeRight()
    {
        DiagnosticList found = [];
        Assert.Null(PlanCompiler.Compile(BookReader.Read([new SourceText("book.yaml", Machine.Replace("cooled by: cooler", "cooled by: relief", StringComparison.Ordinal))], [], KindLibrary.Catalog, found)!, found));
        Assert.Equal("P061", Assert.Single(found, d => d.Severity == Severity.Error).Code);
    }
}
