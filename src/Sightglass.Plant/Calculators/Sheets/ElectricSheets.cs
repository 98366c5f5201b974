using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Electric;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of electricity.</summary>
internal static class ElectricSheets
{
    private const string HighVoltage = "480 V kills. Nobody measures or opens a receptacle who is not qualified; prove dead at the point of work, lock and tag.";

    private static readonly double s_rootOfThree = Math.Sqrt(3);

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "head-end voltage",
            Purpose = "The voltage of the last car when cars draw alike along a train.",
            Inputs =
            [
                new("volts", Dimension.Voltage, "at the locomotive, between two phases", "480 V") { Least = "1 V" },
                new("cars", Dimension.One, "how many, each with the same load", "8") { IsWhole = true, Least = "1", Most = "30" },
                new("power", Dimension.Power, "of each car", "40 kW") { Least = "0 kW" },
                new("power factor", Dimension.One, "of the loads, lagging", "0.85") { Usual = "0.85", Least = "0.1", Most = "1" },
                new("resistance", Dimension.Resistance, "of one wire of one car's length, all cables of the train side by side", "0.0015 Ohm") { Least = "0 Ohm" },
                new("reactance", Dimension.Resistance, "the same, of its reactance", "0.0022 Ohm") { Usual = "0 Ohm", Least = "0 Ohm" },
            ],
            Results = [new("last", Dimension.Voltage, "at the last car, between two phases", "V"), new("drop", Dimension.One, "of the voltage at the locomotive", "%"), new("current", Dimension.Ampere, "in each phase at the locomotive, on all cables together", "A")],
            Formula = "current = cars * power / (sqrt(3) * volts * power factor); last = volts - sqrt(3) * current * cars * (resistance * power factor + reactance * sin) * (cars + 1) / (2 * cars)",
            Source = "IEEE Std 141, ch. 3; equally spaced loads after Kersting (both from memory)",
            Caution = "Loads are taken as current at full voltage: where the voltage falls they draw more. " + HighVoltage,
            Signal = SignalWord.Danger,
            Plot = new("cars", "1", "14", "last"),
            Work = v =>
            {
                double current = v[1] * v[2] / (s_rootOfThree * v[0] * v[3]);
                double drop = s_rootOfThree * FeederDrop.VoltsAlong(current, v[4] * v[1], v[5] * v[1], v[3]) * EqualTaps.DropShare((int)v[1]);
                return [v[0] - drop, drop / v[0], current];
            },
        },
        new()
        {
            Name = "jumper current",
            Purpose = "The current in each jumper where a train is fed over several side by side.",
            Inputs =
            [
                new("power", Dimension.Power, "of all cars behind it", "320 kW") { Least = "0 kW" },
                new("volts", Dimension.Voltage, "there, between two phases", "470 V") { Least = "1 V" },
                new("power factor", Dimension.One, "of the loads, lagging", "0.85") { Usual = "0.85", Least = "0.1", Most = "1" },
                new("jumpers", Dimension.One, "that carry it side by side, alike", "4") { IsWhole = true, Least = "1", Most = "8" },
            ],
            Results = [new("each", Dimension.Ampere, "in each jumper", "A"), new("one out", Dimension.Ampere, "in each of the others when one is missing", "A")],
            Formula = "each = power / (sqrt(3) * volts * power factor * jumpers); one out = each * jumpers / (jumpers - 1)",
            Source = "three-phase power (any text)",
            Caution = "A jumper with a poor contact carries less, and its neighbours more. The rating of the jumper decides. " + HighVoltage,
            Signal = SignalWord.Danger,
            Plot = new("jumpers", "1", "6", "each"),
            Work = v =>
            {
                double all = PowerFactor.Amperes(PowerFactor.VoltAmperes(v[0], v[2]), v[1]);
                return [all / v[3], v[3] > 1 ? all / (v[3] - 1) : 0];
            },
        },
        new()
        {
            Name = "battery",
            Purpose = "How long a battery lasts at a current, and what it shows meanwhile.",
            Inputs =
            [
                new("capacity", Dimension.Ampere * Dimension.Second, "rated", "420 Ah") { Least = "1 Ah" },
                new("rated time", Dimension.Second, "of that rating", "8 h") { Usual = "8 h", Least = "1 h", Most = "100 h" },
                new("current", Dimension.Ampere, "drawn", "60 A") { Least = "0.01 A" },
                new("exponent", Dimension.One, "how much a higher current costs, 1 for an ideal battery", "1.2") { Usual = "1.2", Least = "1", Most = "1.6" },
                new("rest", Dimension.Voltage, "at rest", "66 V") { Usual = "66 V", Least = "1 V" },
                new("inner", Dimension.Resistance, "inner resistance", "0.030 Ohm") { Usual = "0.030 Ohm", Least = "0 Ohm" },
            ],
            Results = [new("time", Dimension.Second, "until it is empty", "h"), new("volts", Dimension.Voltage, "under the current, when full", "V")],
            Formula = "time = rated time * (capacity / (current * rated time))^exponent; volts = rest - inner * current",
            Source = "Peukert 1897 (forms read in stored pages)",
            Caution = "Voltage at rest misleads for hours after charging. A charging battery gives off gas that explodes: no flames, no sparks, eye protection. The engine needs its share to crank.",
            Signal = SignalWord.Warning,
            Plot = new("current", "10 A", "200 A", "time"),
            Work = v => [Peukert.Seconds(v[0], v[1], v[2], v[3]), LeadAcid.Volts(v[4], v[5], v[2])],
        },
    ];
}
