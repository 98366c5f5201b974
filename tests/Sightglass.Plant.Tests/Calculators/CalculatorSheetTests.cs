using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Plant.Tests.Calculators;

/// <summary>Calculations as people ask for them, in the units in which they write. The expected figures are those of the reference rows named, computed elsewhere.</summary>
public sealed class CalculatorSheetTests
{
    private const double Gallons = 3.785411784e-3;
    private const double Pound = 4.4482216152605;

    public static TheoryData<string> Names => [.. CalculatorLibrary.All.Select(c => c.Name)];

    // A4-09 (EN 14531-1, from memory), A4-10 (energy), A4-11 (definitions of brake standards, from memory), A4-13 (statics), A4-15 (49 CFR 213.57), A3-09 (Peukert), A6-01 (acoustics),
    // A6-02 (29 CFR 1910.95 App. A), A6-04 (photometry), A2-06 (Compressed Air and Gas Handbook, from memory), A2-07 (gas law), A1-12 (Heywood, from memory).
    // Fill time: 2,200 US gal at 300 US gal/min, common practice, no source.
    [Theory]
    [InlineData("fill time", "wanted = 2200 US gal; there = 0 L; flow = 300 US gal/min", 0, 440, 1e-9)]
    [InlineData("stopping", "speed = 79 mph; deceleration = 0.9 m/s^2; dead = 1 s; build-up = 4 s", 0, 798.25468, 1e-7)]
    [InlineData("stopping", "speed = 79 mph; deceleration = 0.9 m/s^2; dead = 1 s; build-up = 4 s", 1, 42.240178, 1e-7)]
    [InlineData("stopping on a grade", "speed = 60 mph; deceleration = 0.9 m/s^2; grade = -1.5 %", 0, 477.76935, 1e-7)]
    [InlineData("stopping on a grade", "speed = 60 mph; deceleration = 0.9 m/s^2; grade = 1.5 %", 0, 343.54536, 1e-7)]
    [InlineData("brake force", "piston = 10 in; pressure = 50 psi; cylinders = 2; lever = 8; efficiency = 90 %; mass = 120000 lb; friction = 0.30", 0, 56_548.668 * Pound, 1e-6)]
    [InlineData("brake force", "piston = 10 in; pressure = 50 psi; cylinders = 2; lever = 8; efficiency = 90 %; mass = 120000 lb; friction = 0.30", 1, 0.47123890, 1e-6)]
    [InlineData("brake force", "piston = 10 in; pressure = 50 psi; cylinders = 2; lever = 8; efficiency = 90 %; mass = 120000 lb; friction = 0.30", 2, 1.3203643, 1e-6)]
    [InlineData("holding", "mass = 490 short ton; grade = 2 %; chain = 3350 lbf; lever = 6.2; efficiency = 60 %; friction = 0.35", 1, 6, 1e-12)]
    [InlineData("curve speed", "cant = 4 in; unbalance = 3 in; curve = 2.5", 0, 63.245553 * 0.44704, 1e-7)]
    [InlineData("battery", "capacity = 100 Ah; rated time = 20 h; current = 10 A; exponent = 1.2", 0, 8.7055056 * 3600, 1e-7)]
    [InlineData("horn", "level = 100; measured at = 100 ft; distance = 400 ft", 0, 87.958800, 1e-7)]
    [InlineData("noise dose", "first level = 90; first time = 4 h; second level = 95; second time = 2 h; third level = 85; third time = 2 h", 0, 1.125, 1e-9)]
    [InlineData("noise dose", "first level = 90; first time = 4 h; second level = 95; second time = 2 h; third level = 85; third time = 2 h", 1, 4.3572432, 1e-7)]
    [InlineData("noise dose", "first level = 90; first time = 4 h; second level = 95; second time = 2 h; third level = 85; third time = 2 h", 2, 90.849643, 1e-7)]
    [InlineData("lights", "candela = 200000; height = 3.6 m; distance = 300 m", 0, 2.2217423, 1e-7)]
    [InlineData("lights", "candela = 200000; height = 3.6 m; distance = 300 m", 1, 0.026660908, 1e-7)]
    [InlineData("charge time", "volume = 0.85 m^3; to = 9.65 bar; free air = 132 m^3/h", 0, 220.77922, 1e-6)]
    [InlineData("leakage test", "volume = 8.5221155 ft^3; first = 90 psi; second = 85 psi; between = 1 min", 1, 2.8994778 * 4.719474432e-4, 1e-6)]
    [InlineData("fuel rate", "power = 2000 kW; consumption = 215; density = 840 kg/m^3", 0, 511.90476e-3 / 3600, 1e-7)]
    [InlineData("leak", "first = 100 US gal; second = 90 US gal; between = 10 min; left = 60 US gal", 0, Gallons / 60, 1e-9)]
    [InlineData("leak", "first = 100 US gal; second = 90 US gal; between = 10 min; left = 60 US gal", 1, 1800, 1e-9)]
    [InlineData("fuel left", "usable = 100 L; margin = 40 L; burnt = 30 L/h; speed = 50 mph", 1, 100 * 1609.344, 1e-9)]
    public void Work_ReferenceRow_GivesItsFigure(string name, string given, int result, double expected, double tolerance)
    {
        Calculation calculation = Worked(name, given);
        Assert.Equal(1, calculation.Results[result] / expected, tolerance);
    }

    /// <summary>The drop of several loads by the sum over its parts: each length carries what stands behind it (Kirchhoff).</summary>
    [Fact]
    public void HeadEndVoltage_Cars_IsTheSumOfItsLengths()
    {
        Calculation c = Worked("head-end voltage", "volts = 480 V; cars = 8; power = 40 kW; power factor = 1; resistance = 0.002 Ohm");
        double each = 40e3 / (Math.Sqrt(3) * 480);
        Assert.Equal(480 - (Math.Sqrt(3) * 0.002 * each * Enumerable.Range(1, 8).Sum()), c.Results[0], 1e-9);
        Assert.Equal(8 * each, c.Results[2], 1e-9);
    }

    /// <summary>At the speed that comes out power over speed is what resists, by its own second result.</summary>
    [Theory]
    [InlineData("0 %")]
    [InlineData("1 %")]
    [InlineData("2 %")]
    public void BalanceSpeed_Result_Balances(string grade)
    {
        Calculation c = Worked("balance speed", $"power = 2000 kW; locomotive = 130 short ton; cars = 6; grade = {grade}");
        Assert.Equal(2e6, c.Results[0] * c.Results[1], 2e6 * 1e-6);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Example_OfEverySheet_Works(string name)
    {
        CalculatorSheet sheet = CalculatorLibrary.Find(name)!;
        DiagnosticList found = [];
        Calculation? calculation = Calculation.Of(sheet, sheet.Inputs.ToDictionary(i => i.Name, i => i.Example), found);
        Assert.True(calculation is not null, string.Join('\n', found));
        Assert.All(sheet.Inputs, i => Assert.Contains(i.Name, sheet.Formula, StringComparison.Ordinal));
        Assert.All(sheet.Results, r => Assert.NotNull(UnitTable.Get(r.Example)));
        Assert.All(sheet.Inputs, i => Assert.Contains(i.Example, calculation.Worked(), StringComparison.Ordinal));
        Assert.NotEmpty(sheet.Source);
        Assert.NotEmpty(sheet.Caution);
    }

    [Theory]
    [InlineData("speeed = 79 mph; deceleration = 0.9 m/s^2", "K001", "did you mean `speed`")]
    [InlineData("speed = 79 mph", "K002", "deceleration = 0.9 m/s^2")]
    [InlineData("speed = 79 psi; deceleration = 0.9 m/s^2", "Q003", "speed")]
    [InlineData("speed = -1 mph; deceleration = 0.9 m/s^2", "K003", "0 mph or more")]
    [InlineData("speed = 1 mph; deceleration = 20 m/s^2", "K003", "0.01 m/s^2 to 10 m/s^2")]
    public void Of_WrongValue_IsTold(string given, string code, string says)
    {
        DiagnosticList found = [];
        Assert.Null(Calculation.Of(CalculatorLibrary.Find("stopping")!, Values(given), found));
        Assert.Contains(found, d => d.Code == code && $"{d.Message}; {d.Fix}".Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("stopping on a grade", "speed = 60 mph; deceleration = 0.1 m/s^2; grade = -5 %", "never stops")]
    [InlineData("leak", "first = 100 L; second = 110 L; between = 1 h", "nothing runs out")]
    [InlineData("charge time", "volume = 1 m^3; to = 100 psi; free air = 1 ft^3/min; leakage = 2 ft^3/min", "more leaks")]
    public void Of_NoAnswer_SaysWhy(string name, string given, string says)
    {
        DiagnosticList found = [];
        Assert.Null(Calculation.Of(CalculatorLibrary.Find(name)!, Values(given), found));
        Assert.Contains(says, Assert.Single(found).Message, StringComparison.Ordinal);
    }

    private static Calculation Worked(string name, string given)
    {
        DiagnosticList found = [];
        Calculation? calculation = Calculation.Of(CalculatorLibrary.Find(name)!, Values(given), found);
        Assert.True(calculation is not null, string.Join('\n', found));
        return calculation;
    }

    private static Dictionary<string, string> Values(string given) =>
        given.Split("; ").Select(g => g.Split(" = ", 2)).ToDictionary(g => g[0], g => g[1], StringComparer.Ordinal);
}
