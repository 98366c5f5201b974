using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Plant.Calculators.Running;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of what pulls and what resists.</summary>
internal static class RunningSheets
{
    private const double Gravity = 9.80665;

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "tractive effort",
            Purpose = "What a locomotive pulls at a speed, and where adhesion hands over to power.",
            Inputs =
            [
                new("power", Dimension.Power, "into the traction motors' circuit, head-end power taken off", "2600 kW") { Least = "1 kW" },
                new("efficiency", Dimension.One, "from there to the rail", "85 %") { Usual = "85 %", Least = "1 %", Most = "100 %" },
                new("mass", Dimension.Kilogram, "on the driven axles that pull", "120 t") { Least = "1 kg" },
                new("adhesion", Dimension.One, "share of the weight that the rail holds; sand, water and leaves change it", "0.25") { Least = "0.01", Most = "0.5" },
                new("speed", Dimension.Speed, "of the train", "30 mph") { Least = "0 mph" },
            ],
            Results = [new("effort", Dimension.Force, "at the wheels", "kN"), new("corner", Dimension.Speed, "below it adhesion decides, above it power", "mph")],
            Formula = "effort = min(power * efficiency / speed, mass * g * adhesion); corner = power * efficiency / (mass * g * adhesion)",
            Source = "definition of power; Hay, Railroad Engineering (from memory)",
            Caution = "Ratings of the maker and the limits of couplers and of the head-end power decide.",
            Plot = new("speed", "0 mph", "110 mph", "effort"),
            Work = v => [TractiveEffort.Newtons(v[0], v[1], v[2] * Gravity, v[3], v[4]), TractiveEffort.CornerSpeed(v[0], v[1], v[2] * Gravity, v[3])],
        },
        new()
        {
            Name = "balance speed",
            Purpose = "The speed that a train comes to on a grade.",
            Inputs =
            [
                new("power", Dimension.Power, "at the rail", "2000 kW") { Least = "1 kW" },
                new("locomotive", Dimension.Kilogram, "mass of the locomotive, four axles", "130 short ton") { Least = "1 t" },
                new("cars", Dimension.One, "how many, four axles each", "6") { IsWhole = true, Usual = "0", Least = "0", Most = "60" },
                new("car", Dimension.Kilogram, "mass of one car, loaded", "60 short ton") { Usual = "60 short ton", Least = "1 t" },
                new("grade", Dimension.One, "rise over run", "1 %") { Usual = "0 %", Least = "-5 %", Most = "10 %" },
                new("adhesion", Dimension.One, "share of the locomotive's weight that the rail holds", "0.25") { Usual = "0.25", Least = "0.01", Most = "0.5" },
            ],
            Results = [new("speed", Dimension.Speed, "at which what pulls is what resists", "mph"), new("resistance", Dimension.Force, "at that speed", "kN")],
            Formula = "power / speed = resistance(locomotive, cars, car, at speed) + (locomotive + cars * car) * g * sin(atan(grade)); power / speed is at most locomotive * g * adhesion",
            Source = "Davis 1926, passenger cars and locomotives (from memory), a front of 120 ft² each",
            Caution = "Wind, curves and a cold train add to it. Speed limits decide, not what a train could do.",
            Plot = new("grade", "0 %", "4 %", "speed"),
            Work = Balance,
            NoAnswer = "the train does not start on this grade, or runs away down it",
        },
        new()
        {
            Name = "curve speed",
            Purpose = "The speed allowed by cant on a curve.",
            Inputs =
            [
                new("cant", Dimension.Metre, "of the outer rail", "4 in") { Least = "0 in", Most = "8 in" },
                new("unbalance", Dimension.Metre, "that is allowed", "3 in") { Least = "0 in", Most = "9 in" },
                new("curve", Dimension.One, "in degrees of a 100 ft chord, a plain number", "2.5") { Least = "0.01", Most = "30" },
            ],
            Results = [new("speed", Dimension.Speed, "at which it may be run", "mph")],
            Formula = "speed = sqrt((cant + unbalance) / (0.0007 * curve)) with inches, degrees and mph",
            Source = "49 CFR 213.57 and appendix A (read)",
            Caution = "The timetable and special instructions decide.",
            Plot = new("curve", "0.5", "10", "speed"),
            Work = v => [CurveSpeed.MilesAnHour(v[0] / 0.0254, v[1] / 0.0254, v[2]) * 0.44704],
        },
    ];

    private static ImmutableArray<double> Balance(ImmutableArray<double> v)
    {
        const double front = 120 * 0.3048 * 0.3048;
        double[] locomotive = ResistanceForm.Locomotive1926.Sheet(v[1], 4, front);
        double[] car = v[2] > 0 ? ResistanceForm.Passenger1926.Sheet(v[3], 4, front) : [0, 0, 0];
        double[] train = [.. locomotive.Zip(car, (l, c) => l + (v[2] * c))];
        double mass = v[1] + (v[2] * v[3]);
        double track = mass * Gravity * TrackResistance.GradeShare(v[4]);
        double speed = BalanceSpeed.MetresPerSecond(v[0], train, track, v[1] * Gravity * v[5]);
        return [speed > 0 ? speed : double.NaN, train[0] + (train[1] * speed) + (train[2] * speed * speed) + track];
    }
}
