using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of fuel.</summary>
internal static class FuelSheets
{
    /// <summary>g/kWh of a kg/J.</summary>
    private const double GramsPerKilowattHour = 3.6e9;

    private const string Margin = "Fuel is never run to the last: keep the margin that your railroad asks for. Gauges mislead; glasses on both sides do not.";

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "fill time",
            Purpose = "How long filling takes.",
            Inputs =
            [
                new("wanted", Dimension.Volume, "what shall be in the tank", "9000 L") { Least = "0 L" },
                new("there", Dimension.Volume, "what is in it now", "3000 L") { Least = "0 L" },
                new("flow", Dimension.VolumeFlow, "what the nozzle gives", "300 US gal/min") { Least = "0.001 L/min" },
            ],
            Results = [new("time", Dimension.Second, "until it is filled", "min")],
            Formula = "time = (wanted - there) / flow",
            Source = "definition of flow",
            Caution = "Stay at the nozzle. A port shuts by itself before the tank is full to the brim.",
            Plot = new("there", "0 L", "9000 L", "time"),
            Work = v => [Math.Max(0, v[0] - v[1]) / v[2]],
        },
        new()
        {
            Name = "leak",
            Purpose = "How fast a tank loses fuel, from two readings, and how long until a level is reached.",
            Inputs =
            [
                new("first", Dimension.Volume, "the first reading", "6000 L") { Least = "0 L" },
                new("second", Dimension.Volume, "the second reading", "5700 L") { Least = "0 L" },
                new("between", Dimension.Second, "the time between the two", "20 min") { Least = "1 s" },
                new("burnt", Dimension.VolumeFlow, "what the engine takes out of it meanwhile", "19 L/h") { Usual = "0 L/h", Least = "0 L/h" },
                new("left", Dimension.Volume, "what must not be gone below", "1000 L") { Usual = "0 L", Least = "0 L" },
            ],
            Results = [new("leak", Dimension.VolumeFlow, "what is lost", "L/min"), new("time", Dimension.Second, "from the second reading until that is left", "h")],
            Formula = "leak = (first - second) / between - burnt; time = (second - left) / (leak + burnt)",
            Source = "balance of volume",
            Caution = "A hole gives less as the level falls over it, so the time is a lower bound for a hole below the level asked for. A grade between two readings looks like a leak. " + Margin,
            Plot = new("second", "5000 L", "5950 L", "time"),
            Work = v =>
            {
                double total = (v[0] - v[1]) / v[2];
                return [total - v[3], total > 0 ? Math.Max(0, v[1] - v[4]) / total : double.PositiveInfinity];
            },
            NoAnswer = "the second reading is not below the first: nothing runs out",
        },
        new()
        {
            Name = "fuel left",
            Purpose = "How long the fuel lasts, and how far.",
            Inputs =
            [
                new("usable", Dimension.Volume, "what the pump can draw", "6000 L") { Least = "0 L" },
                new("margin", Dimension.Volume, "what is kept back", "1500 L") { Usual = "0 L", Least = "0 L" },
                new("burnt", Dimension.VolumeFlow, "what the engine takes, head-end power included", "240 L/h") { Least = "0.001 L/h" },
                new("speed", Dimension.Speed, "how fast the train goes on average", "45 mph") { Usual = "0 mph", Least = "0 mph" },
            ],
            Results = [new("time", Dimension.Second, "until the margin is reached", "h"), new("range", Dimension.Metre, "how far in that time", "mi")],
            Formula = "time = (usable - margin) / burnt; range = speed * time",
            Source = "balance of volume",
            Caution = Margin,
            Plot = new("usable", "0 L", "9000 L", "time"),
            Work = v =>
            {
                double time = Math.Max(0, v[0] - v[1]) / v[2];
                return [time, v[3] * time];
            },
        },
        new()
        {
            Name = "range left",
            Purpose = "How far a train still gets with a margin, under head-end load, when a unit is dead.",
            Inputs =
            [
                new("usable", Dimension.Volume, "what the pump of each unit can draw", "6000 L") { Least = "0 L" },
                new("margin", Dimension.Volume, "what is kept back in each", "1500 L") { Usual = "0 L", Least = "0 L" },
                new("units", Dimension.One, "how many locomotives", "2") { Usual = "1", IsWhole = true, Least = "1", Most = "12" },
                new("dead units", Dimension.One, "how many of them do not work", "1") { Usual = "0", IsWhole = true, Least = "0", Most = "12" },
                new("traction", Dimension.Power, "at the shafts for pulling, all units together, on average", "900 kW") { Least = "0 kW" },
                new("head-end", Dimension.Power, "at the shafts for the cars and the units' own needs, on average", "350 kW") { Usual = "0 kW", Least = "0 kW" },
                new("consumption", Dimension.One, "grams of fuel for each kilowatt-hour", "215") { Least = "1" },
                new("density", Dimension.Density, "of the fuel", "840 kg/m^3") { Usual = "840 kg/m^3", Least = "700 kg/m^3", Most = "1000 kg/m^3" },
                new("speed", Dimension.Speed, "how fast the train goes on average", "45 mph") { Least = "0 mph" },
            ],
            Results =
            [
                new("range", Dimension.Metre, "until the margin is reached", "mi"), new("time", Dimension.Second, "until then", "h"),
                new("burnt", Dimension.VolumeFlow, "by all units that work", "L/h"), new("each", Dimension.Power, "asked of each unit that works", "kW"),
            ],
            Formula = "burnt = (traction + head-end) * consumption / density; time = (units - dead units) * (usable - margin) / burnt; range = speed * time; each = (traction + head-end) / (units - dead units)",
            Source = "balance of volume; Heywood, Internal Combustion Engine Fundamentals, ch. 2 (from memory)",
            Caution = "Consumption changes with load, wear and air, and a train that waits burns fuel too. " + Margin,
            Plot = new("usable", "0 L", "9000 L", "range"),
            NoAnswer = "no unit is left that works, or nothing is burnt",
            Remarks =
            [
                new("What is in a dead unit is not counted.", (v, _) => v[3] > 0),
                new("The margin is already reached.", (v, _) => v[0] <= v[1]),
            ],
            Work = v =>
            {
                double power = v[4] + v[5], burnt = FuelRate.Volume(power, v[6] / GramsPerKilowattHour, v[7]);
                double working = Math.Max(0, v[2] - v[3]);
                double time = working > 0 ? working * Math.Max(0, v[0] - v[1]) / burnt : double.PositiveInfinity;
                return [v[8] * time, time, burnt, power / working];
            },
        },
        new()
        {
            Name = "fuel rate",
            Purpose = "What an engine burns at a power.",
            Inputs =
            [
                new("power", Dimension.Power, "at the shaft", "2000 kW") { Least = "0 kW" },
                new("consumption", Dimension.One, "grams of fuel for each kilowatt-hour", "215") { Least = "0" },
                new("density", Dimension.Density, "of the fuel", "840 kg/m^3") { Usual = "840 kg/m^3", Least = "700 kg/m^3", Most = "1000 kg/m^3" },
            ],
            Results = [new("burnt", Dimension.VolumeFlow, "volume", "L/h"), new("mass", Dimension.MassFlow, "mass", "kg/h")],
            Formula = "mass = power * consumption; burnt = mass / density",
            Source = "Heywood, Internal Combustion Engine Fundamentals, ch. 2 (from memory)",
            Caution = "Consumption changes with load, wear and air; the maker's curve decides.",
            Plot = new("power", "0 kW", "2500 kW", "burnt"),
            Work = v => [FuelRate.Volume(v[0], v[1] / GramsPerKilowattHour, v[2]), FuelRate.Mass(v[0], v[1] / GramsPerKilowattHour)],
        },
    ];
}
