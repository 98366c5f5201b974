using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of compressed air, at one temperature.</summary>
internal static class AirSheets
{
    private const double Atmosphere = 101_325;

    private const string Rules = "The test and its limits are those of the rule in force and of your railroad.";

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "charge time",
            Purpose = "How long a compressor takes to pump up a volume.",
            Inputs =
            [
                new("volume", Dimension.Volume, "of all that is charged", "0.85 m^3") { Least = "0 m^3" },
                new("from", Dimension.Pressure, "the pressure at the start, by gauge", "0 psi") { Usual = "0 psi", Least = "0 psi", Basis = PressureBasis.Gauge },
                new("to", Dimension.Pressure, "the pressure at the end, by gauge", "140 psi") { Least = "0 psi", Basis = PressureBasis.Gauge },
                new("free air", Dimension.VolumeFlow, "what the compressor gives, at the pressure of the air around", "80 ft^3/min") { Least = "0.001 ft^3/min" },
                new("leakage", Dimension.VolumeFlow, "what is lost meanwhile, at the pressure of the air around", "5 ft^3/min") { Usual = "0 ft^3/min", Least = "0 ft^3/min" },
            ],
            Results = [new("time", Dimension.Second, "until it is charged", "min")],
            Formula = "time = volume * (to - from) / ((free air - leakage) * 1 atm)",
            Source = "Compressed Air and Gas Handbook (from memory); Boyle's law",
            Caution = "A warm compressor gives less, and a long train charges from the head: its last car lags.",
            Plot = new("leakage", "0 ft^3/min", "60 ft^3/min", "time"),
            Work = v => [v[3] > v[4] ? v[0] * Math.Max(0, v[2] - v[1]) / ((v[3] - v[4]) * Atmosphere) : double.PositiveInfinity],
            NoAnswer = "more leaks than the compressor gives",
        },
        new()
        {
            Name = "leakage test",
            Purpose = "What a fall of pressure says about the air that is lost.",
            Inputs =
            [
                new("volume", Dimension.Volume, "of all that is shut in", "8.5 ft^3") { Least = "0 ft^3" },
                new("first", Dimension.Pressure, "the pressure at the start, by gauge", "90 psi") { Least = "0 psi", Basis = PressureBasis.Gauge },
                new("second", Dimension.Pressure, "the pressure at the end, by gauge", "86 psi") { Least = "0 psi", Basis = PressureBasis.Gauge },
                new("between", Dimension.Second, "the time between the two", "1 min") { Least = "1 s" },
            ],
            Results = [new("fall each minute", Dimension.Pressure, "the pressure that is lost in a minute", "psi"), new("leakage", Dimension.VolumeFlow, "at the pressure of the air around", "ft^3/min")],
            Formula = "fall each minute = (first - second) * 1 min / between; leakage = volume * (first - second) / (between * 1 atm)",
            Source = "gas law at one temperature; limits are read in 49 CFR 232.205",
            Caution = "Air that cools after charging falls without a leak: wait before you start the clock. " + Rules,
            Plot = new("second", "80 psi", "90 psi", "leakage"),
            Work = v => [(v[1] - v[2]) * 60 / v[3], v[0] * (v[1] - v[2]) / (v[3] * Atmosphere)],
        },
    ];
}
