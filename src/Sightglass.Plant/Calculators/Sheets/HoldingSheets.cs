using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of brakes that stop and hold.</summary>
internal static class HoldingSheets
{
    private const double Gravity = 9.80665;
    private const string Decides = "Friction, wear, wet rails and grades decide more than a formula: keep the margins of your railroad, and never count dynamic brake for stopping.";

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "brake force",
            Purpose = "What brake cylinders press, and how hard that slows.",
            Inputs =
            [
                new("piston", Dimension.Metre, "diameter of one piston", "10 in") { Least = "1 mm" },
                new("pressure", Dimension.Pressure, "in the cylinders, by gauge", "50 psi") { Least = "0 psi", Basis = PressureBasis.Gauge },
                new("cylinders", Dimension.One, "how many", "2") { IsWhole = true, Least = "1", Most = "64" },
                new("lever", Dimension.One, "shoe force over piston force", "8") { Usual = "1", Least = "0.01" },
                new("efficiency", Dimension.One, "of the rigging", "90 %") { Usual = "100 %", Least = "1 %", Most = "100 %" },
                new("mass", Dimension.Kilogram, "of the vehicle", "120000 lb") { Least = "1 kg" },
                new("friction", Dimension.One, "of shoe on wheel or pad on disc", "0.30") { Least = "0", Most = "1" },
            ],
            Results = [new("force", Dimension.Force, "on all shoes", "kN"), new("ratio", Dimension.One, "of that to the weight", "%"), new("deceleration", Dimension.Acceleration, "5 % for what turns taken off", "m/s^2")],
            Formula = "force = area of piston * pressure * cylinders * lever * efficiency; ratio = force / (mass * g); deceleration = ratio * friction * g / 1.05",
            Source = "definitions of the trade's brake standards (from memory)",
            Caution = Decides,
            Signal = SignalWord.Caution,
            Plot = new("pressure", "0 psi", "80 psi", "deceleration"),
            Work = v =>
            {
                double force = BrakingForce.Shoes(Math.PI * v[0] * v[0] / 4, v[1], (int)v[2], v[3], v[4]);
                double ratio = BrakingForce.Ratio(force, v[5] * Gravity);
                return [force, ratio, BrakingForce.Deceleration(ratio, v[6]) * Gravity];
            },
        },
        new()
        {
            Name = "stopping",
            Purpose = "How far and how long a stop takes, with the time until the brakes are full.",
            Inputs =
            [
                new("speed", Dimension.Speed, "at the start", "79 mph") { Least = "0 mph" },
                new("deceleration", Dimension.Acceleration, "when the brakes are full", "0.9 m/s^2") { Least = "0.01 m/s^2", Most = "10 m/s^2" },
                new("dead", Dimension.Second, "until the brakes begin, reaction included", "1 s") { Usual = "0 s", Least = "0 s" },
                new("build-up", Dimension.Second, "from then until they are full", "4 s") { Usual = "0 s", Least = "0 s" },
            ],
            Results = [new("distance", Dimension.Metre, "until it stands", "m"), new("time", Dimension.Second, "until it stands", "s")],
            Formula = "distance = speed * (dead + build-up) - deceleration * build-up^2 / 6 + (speed - deceleration * build-up / 2)^2 / (2 * deceleration)",
            Source = "equations of motion; EN 14531-1 (from memory)",
            Caution = Decides,
            Signal = SignalWord.Caution,
            Plot = new("speed", "0 mph", "110 mph", "distance"),
            Work = v =>
            {
                (double seconds, double metres) = Running.Stopping.WithBuildUp(v[0], v[1], v[2], v[3]);
                return [metres, seconds];
            },
        },
        new()
        {
            Name = "stopping on a grade",
            Purpose = "How far a stop takes up or down a grade, from the moment the brakes are full.",
            Inputs =
            [
                new("speed", Dimension.Speed, "at the start", "60 mph") { Least = "0 mph" },
                new("deceleration", Dimension.Acceleration, "that the brakes give on the level", "0.9 m/s^2") { Least = "0.01 m/s^2", Most = "10 m/s^2" },
                new("grade", Dimension.One, "rise over run, downhill below 0", "-1.5 %") { Least = "-10 %", Most = "10 %" },
            ],
            Results = [new("distance", Dimension.Metre, "until it stands", "m")],
            Formula = "distance = speed^2 / (2 * (deceleration + g * sin(atan(grade))))",
            Source = "energy; the equation read in a paper on signal engineering",
            Caution = Decides,
            Signal = SignalWord.Caution,
            Plot = new("grade", "-3 %", "3 %", "distance"),
            Work = v => [Running.Stopping.MetresOnGrade(v[0], v[1], v[2])],
            NoAnswer = "the grade pulls more than the brakes hold: it never stops",
        },
        new()
        {
            Name = "holding",
            Purpose = "What holds a standing train on a grade, and how many hand brakes that is.",
            Inputs =
            [
                new("mass", Dimension.Kilogram, "of the train", "490 short ton") { Least = "1 kg" },
                new("grade", Dimension.One, "rise over run", "2 %") { Least = "0 %", Most = "10 %" },
                new("chain", Dimension.Force, "pull on the chain of one hand brake", "3350 lbf") { Least = "1 N" },
                new("lever", Dimension.One, "shoe force over chain pull", "6.2") { Least = "0.01" },
                new("efficiency", Dimension.One, "of the rigging", "60 %") { Least = "1 %", Most = "100 %" },
                new("friction", Dimension.One, "of shoe on wheel at rest", "0.35") { Least = "0.01", Most = "1" },
            ],
            Results = [new("force", Dimension.Force, "along the rail, that must be held", "kN"), new("hand brakes", Dimension.One, "with a fifth more than is needed, whole ones", "1")],
            Formula = "force = mass * g * sin(atan(grade)); hand brakes = 1.2 * mass * g * grade / (chain * lever * efficiency * friction), rounded up",
            Source = "statics; 1.2 is common practice",
            Caution = "Apply, then test: release the air and see that it stands. How many hand brakes are set is the rule of your railroad. " + Decides,
            Signal = SignalWord.Warning,
            Plot = new("grade", "0 %", "4 %", "hand brakes"),
            Work = v => [ParkingHold.Force(v[0] * Gravity, v[1]), ParkingHold.HandBrakes(v[0] * Gravity, v[1], v[2], v[3], v[4], v[5])],
        },
    ];
}
