using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Light;
using Sightglass.Plant.Calculators.Sound;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of what is heard and seen.</summary>
internal static class SenseSheets
{
    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "horn",
            Purpose = "How loud a horn is at a distance.",
            Inputs =
            [
                new("level", Dimension.One, "dB(A) where it was measured, a plain number", "100") { Least = "0", Most = "200" },
                new("measured at", Dimension.Metre, "the distance there", "100 ft") { Usual = "100 ft", Least = "0.1 m" },
                new("distance", Dimension.Metre, "where you stand", "400 ft") { Least = "0.1 m" },
            ],
            Results = [new("heard", Dimension.One, "dB(A)", "1")],
            Formula = "heard = level - 20 * log10(distance / measured at)",
            Source = "acoustics of a small source in the open; 49 CFR 229.129 has 96 to 110 dB(A) at 100 ft (from memory)",
            Caution = "Wind, walls and ground change it by several dB. Nobody stands before a horn that may sound.",
            Signal = SignalWord.Caution,
            Plot = new("distance", "25 ft", "2000 ft", "heard"),
            Work = v => [SoundLevel.AtDistance(v[0], v[1], v[2])],
        },
        new()
        {
            Name = "noise dose",
            Purpose = "What a day in noise adds up to: up to three stretches of it.",
            Inputs =
            [
                new("first level", Dimension.One, "dB(A), a plain number", "90") { Least = "0", Most = "140" },
                new("first time", Dimension.Second, "how long", "4 h") { Least = "0 s", Most = "24 h" },
                new("second level", Dimension.One, "dB(A)", "95") { Usual = "0", Least = "0", Most = "140" },
                new("second time", Dimension.Second, "how long", "2 h") { Usual = "0 s", Least = "0 s", Most = "24 h" },
                new("third level", Dimension.One, "dB(A)", "85") { Usual = "0", Least = "0", Most = "140" },
                new("third time", Dimension.Second, "how long", "2 h") { Usual = "0 s", Least = "0 s", Most = "24 h" },
            ],
            Results = [new("dose", Dimension.One, "of the US workplace rule (90 dB(A), 5 dB)", "%"), new("stricter", Dimension.One, "of the stricter recommendation (85 dB(A), 3 dB)", "%"), new("day level", Dimension.One, "dB(A) over eight hours that would give the dose", "1")],
            Formula = "dose = first time / allowed(first level) + second time / allowed(second level) + third time / allowed(third level); allowed(L) = 8 h / 2^((L - 90) / 5)",
            Source = "29 CFR 1910.95 appendix A (read)",
            Caution = "From half of the dose on a hearing programme is asked for (49 CFR 227). Wear hearing protection in the engine room always.",
            Signal = SignalWord.Caution,
            Plot = new("first time", "0 h", "8 h", "dose"),
            Work = v =>
            {
                (double, double)[] all = [(v[0], v[1]), (v[2], v[3]), (v[4], v[5])];
                double dose = NoiseDose.Osha.Percent(all);
                return [dose / 100, NoiseDose.Niosh.Percent(all) / 100, NoiseDose.Osha.DayLevel(dose)];
            },
            NoAnswer = "without any time in noise there is no dose",
        },
        new()
        {
            Name = "lights",
            Purpose = "How much light of a headlight falls on something that stands by the track, and under which angle a lamp is seen.",
            Inputs =
            [
                new("candela", Dimension.One, "of the beam, a plain number", "200000") { Least = "1" },
                new("height", Dimension.Metre, "of the lamp over the ground", "3.6 m") { Usual = "3.6 m", Least = "0 m", Most = "20 m" },
                new("distance", Dimension.Metre, "along the ground", "300 m") { Least = "0.1 m" },
                new("spacing", Dimension.Metre, "between two auxiliary lights", "1.5 m") { Usual = "1.5 m", Least = "0 m" },
            ],
            Results = [new("upright", Dimension.One, "lx on something upright", "1"), new("ground", Dimension.One, "lx on the ground", "1"), new("angle", Dimension.One, "between the two lights as they are seen from there", "deg")],
            Formula = "upright = candela * distance / (distance^2 + height^2)^1.5; ground = candela * height / (distance^2 + height^2)^1.5; angle = 2 * atan(spacing / (2 * distance))",
            Source = "photometry (any text); at least 200,000 candela: 49 CFR 229.133 (read)",
            Caution = "Clear air and a clean glass are taken for granted. Never look into a lit headlight.",
            Signal = SignalWord.Caution,
            Plot = new("distance", "20 m", "600 m", "upright"),
            Work = v => [Illuminance.OnUpright(v[0], v[1], v[2]), Illuminance.OnGround(v[0], v[1], v[2]), Illuminance.ArcMinutes(v[3], v[2]) / 60 * Math.PI / 180],
        },
    ];
}
