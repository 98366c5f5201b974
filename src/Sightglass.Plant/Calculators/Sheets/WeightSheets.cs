using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Weight;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Calculations of what stands on the rails.</summary>
internal static class WeightSheets
{
    private const double Gravity = 9.80665;

    private static readonly Dimension s_stiffness = Dimension.Force / Dimension.Metre;

    private static readonly ImmutableArray<string> s_wheels = [.. new[] { "1", "2", "3", "4" }.SelectMany(axle => new[] { $"right {axle}", $"left {axle}" })];

    public static ImmutableArray<CalculatorSheet> All { get; } =
    [
        new()
        {
            Name = "wheel loads",
            Purpose = "What each wheel of a locomotive on two trucks carries, by what is in its tanks, with a spring missing or cracked.",
            Inputs =
            [
                new("body", Dimension.Kilogram, "mass over the trucks, tanks empty", "72 t") { Least = "1 t" },
                new("ahead", Dimension.Metre, "how far its centre of mass stands ahead of the middle between the trucks, behind below 0", "0.1 m") { Usual = "0 m", Least = "-5 m", Most = "5 m" },
                new("aside", Dimension.Metre, "how far it stands to the right of the middle, left below 0", "0 m") { Usual = "0 m", Least = "-0.5 m", Most = "0.5 m" },
                new("forward", Dimension.Volume, "fuel in the forward tank", "3000 L") { Usual = "0 L", Least = "0 L" },
                new("centre", Dimension.Volume, "fuel in the tank in the middle", "3000 L") { Usual = "0 L", Least = "0 L" },
                new("aft", Dimension.Volume, "fuel in the aft tank", "3000 L") { Usual = "0 L", Least = "0 L" },
                new("tank", Dimension.Metre, "from the middle of the forward or the aft tank to the middle between the trucks", "2 m") { Usual = "2 m", Least = "0 m" },
                new("density", Dimension.Density, "of the fuel", "840 kg/m^3") { Usual = "840 kg/m^3", Least = "700 kg/m^3", Most = "1000 kg/m^3" },
                new("truck", Dimension.Kilogram, "mass of one truck, without its wheelsets", "8 t") { Least = "0 t" },
                new("wheelset", Dimension.Kilogram, "mass of one wheelset with what hangs on it", "4 t") { Least = "0 t" },
                new("trucks apart", Dimension.Metre, "between the middles of the two trucks", "9 m") { Least = "1 m" },
                new("axles apart", Dimension.Metre, "between the axles of a truck", "2.7 m") { Least = "0.5 m" },
                new("springs apart", Dimension.Metre, "between the springs of the two sides", "2 m") { Usual = "2 m", Least = "0.5 m" },
                new("wheels apart", Dimension.Metre, "between the points at which the two wheels of an axle stand on the rails", "1.5 m") { Usual = "1.5 m", Least = "0.5 m" },
                new("body spring", s_stiffness, "force for each length, of each of the four springs below the body", "1.5 kN/mm") { Least = "0.001 kN/mm" },
                new("axle spring", s_stiffness, "the same, of each of the eight springs over the axles", "1.2 kN/mm") { Least = "0.001 kN/mm" },
                new("broken", Dimension.One, "which axle spring is not whole: its side and its axle from the front", "none") { Usual = "none", Choices = ["none", .. s_wheels] },
                new("left", Dimension.One, "share of its stiffness that this one still has: 0 % where it is missing", "0 %") { Usual = "0 %", Least = "0 %", Most = "100 %" },
                new("clearance", Dimension.Metre, "how far a frame goes down, from where it stands on whole springs, until it rests on its stop", "30 mm") { Usual = "30 mm", Least = "0 mm" },
                new("pull", Dimension.Force, "at the coupler", "0 kN") { Usual = "0 kN", Least = "0 kN" },
                new("pull height", Dimension.Metre, "of the coupler over the points at which the trucks pull", "0.4 m") { Usual = "0.4 m", Least = "0 m", Most = "2 m" },
                new("limit", Dimension.Kilogram, "on one wheel", "16 t") { Usual = "16 t", Least = "1 t" },
            ],
            Results =
            [
                .. s_wheels.Select(w => new CalculatorValue(w, Dimension.Kilogram, "on this wheel, side and axle from the front", "t")),
                new("heaviest", Dimension.Kilogram, "on the wheel that carries most", "t"),
                new("unlike", Dimension.One, "greatest difference between the two wheels of an axle, of their sum", "%"),
                new("on a stop", Dimension.Kilogram, "with which a frame rests on its stop", "t"),
            ],
            Formula = "sum of R = (body + density * (forward + centre + aft) + 2 * truck) * g; sum of R * x = (body * ahead + density * (forward - aft) * tank) * g - pull * pull height; sum of R * y = body * aside * g; "
                + "R = axle spring * way, and broken only left of it until the frame rests on its stop after clearance, at trucks apart, axles apart, springs apart; at the pivots: body spring * way; "
                + "wheel = wheelset * g / 2 + R by the lever from springs apart to wheels apart; heaviest <= limit",
            Source = "statics of rigid bodies on linear springs",
            Caution = "Springs take up friction and set, and scales decide: weigh the machine. A broken spring is for the mechanical department, and it may be against the rules to move: ask before. Nobody goes under a body that is not blocked.",
            Signal = SignalWord.Warning,
            Plot = new("forward", "0 L", "6000 L", "heaviest"),
            NoAnswer = "a wheel lifts off and nothing holds it: the machine does not stand like this",
            Remarks =
            [
                new("The heaviest wheel is over the limit.", (v, r) => r[8] > v[^1] * (1 + 1e-9)),
                new("A frame rests on its stop: it rides there without a spring.", (_, r) => r[10] > 0),
                new("A wheel carries nothing: it lifts off.", (_, r) => r.Take(8).Any(w => w <= 0)),
            ],
            Work = Wheels,
        },
    ];

    private static ImmutableArray<double> Wheels(ImmutableArray<double> v)
    {
        WheelLoads loads = new()
        {
            Body = [(v[0], v[1], v[2]), (v[3] * v[7], v[6], 0), (v[4] * v[7], 0, 0), (v[5] * v[7], -v[6], 0)],
            Truck = v[8],
            Wheelset = v[9],
            TruckDistance = v[10],
            AxleDistance = v[11],
            SpringBase = v[12],
            WheelBase = v[13],
            BodySpring = v[14],
            AxleSpring = v[15],
            Broken = (int)v[16] - 1,
            Left = v[17],
            Clearance = v[18],
            Pull = v[19] * v[20],
        };
        if (loads.Solve() is not { } forces)
        {
            return [.. Enumerable.Repeat(double.NaN, 11)];
        }

        double[] wheels = [.. forces.Wheels.Select(n => n / Gravity)];
        double unlike = Enumerable.Range(0, 4).Max(a => Math.Abs(wheels[2 * a] - wheels[(2 * a) + 1]) / Math.Max(1e-9, wheels[2 * a] + wheels[(2 * a) + 1]));
        return [.. wheels, wheels.Max(), unlike, forces.Stop / Gravity];
    }
}
