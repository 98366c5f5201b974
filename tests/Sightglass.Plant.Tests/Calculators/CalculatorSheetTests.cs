using Sightglass.Basics.Language;
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
    // Glasses: A1-10 (Marks' handbook, from memory), A1-11 (geometry); the upright tank is πr²h. Range left: A1-12 again, and 900 L from each of two of three units.
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
    [InlineData("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 562.88934 mm; second = 437.11067 mm; grade = 5.2407779 %", 0, 1.2, 1e-7)]
    [InlineData("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 112.15109 mm; second = 0 mm; grade = 5.2407779 %", 0, 0.12, 1e-7)]
    [InlineData("glasses of a lying tank", "length = 2.5 m; diameter = 1.2 m; first = 350 mm; second = 350 mm", 0, 0.68602155, 1e-7)]
    [InlineData("glasses of an upright tank", "diameter = 2 m; depth = 1.2 m; first = 500 mm; second = 500 mm", 0, Math.PI / 2, 1e-12)]
    [InlineData("range left", "usable = 100 L; traction = 2000 kW; consumption = 215; density = 840 kg/m^3; speed = 100 km/h", 2, 511.90476e-3 / 3600, 1e-7)]
    [InlineData("range left", "usable = 1000 L; margin = 100 L; units = 3; dead units = 1; traction = 1500 kW; head-end = 500 kW; consumption = 215; density = 840 kg/m^3; speed = 100 km/h", 0, 1800 / 511.90476 * 100e3, 1e-7)]
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
        List<CalculatorRefusal> refused = [];
        Calculation? calculation = Calculation.Of(sheet, sheet.Inputs.ToDictionary(i => i.Name, i => i.Example), refused);
        Assert.True(calculation is not null, string.Join('\n', refused));
        string worked = string.Join("; ", calculation.Worked().Select(l => string.Concat(l.Select(p => p.Text))));
        Assert.All(sheet.Inputs, i => Assert.Contains(i.Name, sheet.Formula, StringComparison.Ordinal));
        Assert.All(sheet.Results, r => Assert.NotNull(UnitTable.Get(r.Example)));
        Assert.All(sheet.Inputs, i => Assert.Contains(i.Example, worked, StringComparison.Ordinal));
        Assert.NotEmpty(sheet.Source);
        Assert.NotEmpty(sheet.Caution);
    }

    /// <summary>Every plot is drawn from its own example, in both systems of units: it goes through the result that came out, and says something there.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Curve_OfEverySheet_GoesThroughItsMark(string name)
    {
        CalculatorSheet sheet = CalculatorLibrary.Find(name)!;
        Calculation calculation = Calculation.Of(sheet, sheet.Inputs.ToDictionary(i => i.Name, i => i.Example), [])!;
        foreach (UnitSystem? system in new UnitSystem?[] { null, UnitSystem.Us, UnitSystem.Si })
        {
            CalculatorCurve curve = CalculatorCurve.From(calculation, system);
            Assert.Contains(curve.Points, p => Math.Abs(p.X - curve.Mark.X) < 1e-9 && Math.Abs(p.Y - curve.Mark.Y) <= 1e-9 * Math.Abs(curve.Mark.Y));
            Assert.True(curve.Points.Count(p => double.IsFinite(p.Y)) > curve.Points.Length / 2, "half of the plot has no answer");
            Assert.True(curve.Points.Select(p => p.Y).Where(double.IsFinite).Distinct().Count() > 2, "the plot is flat");
            Assert.InRange(curve.Mark.Y, curve.Up.From, curve.Up.To);
        }
    }

    [Theory]
    [InlineData("stopping", "speeed = 79 mph; deceleration = 0.9 m/s^2", "speeed", "did you mean `speed`")]
    [InlineData("stopping", "speed = 79 mph", "deceleration", "“deceleration” is missing: when the brakes are full. Write it like “0.9 m/s^2”.")]
    [InlineData("stopping", "speed = ; deceleration = 0.9 m/s^2", "speed", "“speed” is missing: at the start. Write it like “79 mph”.")]
    [InlineData("stopping", "speed = fast; deceleration = 0.9 m/s^2", "speed", "“speed”: “fast” is no number. Write it like “79 mph”.")]
    [InlineData("stopping", "speed = 79; deceleration = 0.9 m/s^2", "speed", "“speed”: “79” has no unit. Write one behind it: m/s, km/h, mph, ft/s.")]
    [InlineData("stopping", "speed = 79 knots; deceleration = 0.9 m/s^2", "speed", "“speed”: the unit in “79 knots” is not known. Write one of: m/s, km/h, mph, ft/s.")]
    [InlineData("stopping", "speed = 79 psi; deceleration = 0.9 m/s^2", "speed", "“speed”: “79 psi” measures something else. Write one of: m/s, km/h, mph, ft/s.")]
    [InlineData("stopping", "speed = 7,9 mph; deceleration = 0.9 m/s^2", "speed", "Write decimals with a point")]
    [InlineData("stopping", "speed = 1 000 mph; deceleration = 0.9 m/s^2", "speed", "has a comma or a space in its number")]
    [InlineData("stopping", "speed = 1e400 mph; deceleration = 0.9 m/s^2", "speed", "“1e400 mph” is no number")]
    [InlineData("stopping", "speed = 1/0 mph; deceleration = 0.9 m/s^2", "speed", "“1/0 mph” is no number")]
    [InlineData("horn", "level = 1e400; distance = 1 m", "level", "“1e400” is no number")]
    [InlineData("stopping", "speed = -79; deceleration = 0.9 m/s^2", "speed", "“-79” has no unit")]
    [InlineData("holding", "mass = 490 short ton; grade = 2 %; chain = 3350 lbf; lever = 6.2 x; efficiency = 60 %; friction = 0.35", "lever", "has a unit that does not belong there")]
    [InlineData("stopping", "speed = -1 mph; deceleration = 0.9 m/s^2", "speed", "“speed” is -1 mph; it can be 0 mph or more.")]
    [InlineData("stopping", "speed = 1 mph; deceleration = 20 m/s^2", "deceleration", "it can be 0.01 m/s^2 to 10 m/s^2.")]
    [InlineData("leakage test", "volume = 1 m^3; first = 90 psia; second = 85 psi; between = 1 min", "first", "is measured from vacuum; here it is measured from the air around.")]
    [InlineData("jumper current", "power = 320 kW; volts = 470 V; jumpers = 2.5", "jumpers", "“jumpers” counts things: “2.5” is no whole number.")]
    [InlineData("horn", "level = 100 kW; distance = 1 m", "level", "has a unit that does not belong there. Write a plain number like “100”.")]
    [InlineData("wheel loads", "body = 72 t; truck = 8 t; wheelset = 4 t; trucks apart = 9 m; axles apart = 2.7 m; body spring = 1.5 kN/mm; axle spring = 1.2 kN/mm; broken = middle 1", "broken", "there is no “middle 1”. Write one of: none, right 1, left 1,")]
    [InlineData("wheel loads", "body = 72 t; truck = 8 t; wheelset = 4 t; trucks apart = 9 m; axles apart = 2.7 m; body spring = 1.5 t; axle spring = 1.2 kN/mm", "body spring", "Write one of: kN/mm, lbf/in.")]
    public void Of_WrongValue_IsToldAtItsInput(string name, string given, string input, string says)
    {
        List<CalculatorRefusal> refused = [];
        Assert.Null(Calculation.Of(CalculatorLibrary.Find(name)!, Values(given), refused));
        Assert.Contains(refused, r => r.Input == input && r.Sentence.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("stopping on a grade", "speed = 60 mph; deceleration = 0.1 m/s^2; grade = -5 %", "never stops")]
    [InlineData("leak", "first = 100 L; second = 110 L; between = 1 h", "nothing runs out")]
    [InlineData("charge time", "volume = 1 m^3; to = 100 psi; free air = 1 ft^3/min; leakage = 2 ft^3/min", "More leaks")]
    [InlineData("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 0 mm; second = 0 mm", "Both glasses show nothing")]
    [InlineData("glasses of a lying tank", "length = 2.5 m; diameter = 1.2 m; first = 1300 mm; second = 350 mm", "more than the tank is high")]
    [InlineData("range left", "usable = 100 L; units = 1; dead units = 1; traction = 100 kW; consumption = 215; speed = 1 mph", "No unit is left")]
    [InlineData("wheel loads", "body = 72 t; truck = 8 t; wheelset = 4 t; trucks apart = 9 m; axles apart = 2.7 m; body spring = 1.5 kN/mm; axle spring = 1.2 kN/mm; broken = left 3; clearance = 10 m", "lifts off and nothing holds it")]
    public void Of_NoAnswer_SaysWhy(string name, string given, string says)
    {
        List<CalculatorRefusal> refused = [];
        Assert.Null(Calculation.Of(CalculatorLibrary.Find(name)!, Values(given), refused));
        CalculatorRefusal only = Assert.Single(refused);
        Assert.Null(only.Input);
        Assert.Contains(says, only.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 563 mm; second = 437 mm; grade = 5.24 %", "")]
    [InlineData("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 112 mm; second = 0 mm; grade = 5.24 %", "A part of the floor is dry")]
    [InlineData("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 500 mm; second = 500 mm; grade = 2 %", "do not differ as this grade makes them")]
    [InlineData("range left", "usable = 100 L; margin = 100 L; units = 2; dead units = 1; traction = 100 kW; consumption = 215; speed = 1 mph", "What is in a dead unit is not counted. The margin is already reached.")]
    [InlineData("wheel loads", "body = 72 t; truck = 8 t; wheelset = 4 t; trucks apart = 9 m; axles apart = 2.7 m; body spring = 1.5 kN/mm; axle spring = 1.2 kN/mm; limit = 13 t; broken = left 3", "over the limit. A frame rests on its stop")]
    [InlineData("wheel loads", "body = 72 t; truck = 8 t; wheelset = 4 t; trucks apart = 9 m; axles apart = 2.7 m; body spring = 1.5 kN/mm; axle spring = 1.2 kN/mm; broken = left 3; left = 2 %; clearance = 10 m", "A wheel carries nothing")]
    public void Remarks_OfResults_SayWhatHolds(string name, string given, string says) => Assert.Contains(says, string.Join(' ', Worked(name, given).Remarks), StringComparison.Ordinal);

    [Fact]
    public void Remarks_WhereNothingHolds_AreNone() =>
        Assert.Empty(Worked("glasses of a box tank", "length = 2.4 m; width = 1 m; depth = 0.9 m; first = 563 mm; second = 437 mm; grade = 5.24 %").Remarks);

    /// <summary>The same in US and in metric units: what goes in and what comes out.</summary>
    [Theory]
    [InlineData("stopping", "speed = 79 mph; deceleration = 0.9 m/s^2", UnitSystem.Us, "2 273 ft")]
    [InlineData("stopping", "speed = 127.138 km/h; deceleration = 2.01325 mph/s", UnitSystem.Si, "692.9 m")]
    [InlineData("fuel rate", "power = 2000 kW; consumption = 215", UnitSystem.Us, "135.2 US gal/h")]
    [InlineData("tractive effort", "power = 2600 kW; mass = 120 t; adhesion = 0.25; speed = 30 mph", UnitSystem.Us, "37 046 lbf")]
    public void Shown_InASystem_IsInItsUnits(string name, string given, UnitSystem system, string says) =>
        Assert.Equal(says, Worked(name, given).Shown(0, system).Replace('\u202F', ' ').Replace('\u00A0', ' '));

    /// <summary>Each result's unit has one on the other side, or both sides know it.</summary>
    [Fact]
    public void Units_OfEveryResult_AreKnownOnBothSides()
    {
        string[] both = ["1", "%", "deg", "s", "min", "h", "V", "A"];
        Assert.Empty(CalculatorLibrary.All.SelectMany(s => s.Results).Select(r => UnitTable.Get(r.Example)).Where(u => UnitPairs.Other(u) is null && !both.Contains(u.Symbol)).Select(u => u.Symbol));
        Assert.All(CalculatorLibrary.All.SelectMany(s => s.Results).Select(r => UnitTable.Get(r.Example)), u => Assert.Equal(u.Dimension, (UnitPairs.Other(u) ?? u).Dimension));
    }

    private static Calculation Worked(string name, string given)
    {
        List<CalculatorRefusal> refused = [];
        Calculation? calculation = Calculation.Of(CalculatorLibrary.Find(name)!, Values(given), refused);
        Assert.True(calculation is not null, string.Join('\n', refused));
        return calculation;
    }

    private static Dictionary<string, string> Values(string given) =>
        given.Split("; ").Select(g => g.Split(" = ", 2)).ToDictionary(g => g[0], g => g[1], StringComparer.Ordinal);
}
