using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>How breakers open by themselves, of one wire or of three.</summary>
internal static class Tripping
{
    public const string Details = """
        Warmth gathers by the current and goes away by a lag: a steady current trips it after the time of its curve (1.25 times its rating after an hour, twice after a minute, four times after eight seconds, eight times after one and a half; the magnet from
        ten times on at once), and warm it trips sooner. Tripped it stands off; put on again while the fault is there, it trips again. Source: first-order lag (any text of control, from memory); the curve is common practice.
        """;

    public static readonly ImmutableArray<KindParameter> Parameters =
    [
        Parameter.Needed("rating", Dimension.Ampere, "The current that it stands for ever.", "0.01 A", "100000 A"),
        Parameter.Choice("trips by", "Warmth alone, or at once by a magnet besides.", Magnetic, "warmth", Magnetic),
        Parameter.Of("cools in", Dimension.Second, "Time in which its warmth falls to 37 %.", "2 min", "1 s", "10 h"),
    ];

    public static readonly ImmutableArray<KindQuantity> Quantities =
        [new("warmth", Dimension.One, "How far it is on its way to tripping, 0 to 1."), new("tripped", Dimension.One, "It has opened by itself and nobody has put it on since.", IsCondition: true)];

    public static readonly ImmutableArray<KindFault> Faults = [new("stuck", "It cannot be moved by hand.", []), new("does not trip", "It stays on whatever goes through it.", [])];

    private const string Magnetic = "magnetic";

    /// <summary>Multiples of the rating and the s that each is stood; with the magnet at once from ten times on (common practice, no source).</summary>
    private static readonly TripCurve s_thermal = new((1.25, 3600), (2, 60), (4, 8), (8, 1.5));

    private static readonly TripCurve s_magnetic = new((1.25, 3600), (2, 60), (4, 8), (8, 1.5), (10, 0.02));

    /// <summary>In the first pass.</summary>
    public static void Declare(PlanBuilder plan, Item item)
    {
        Slot position = plan.PositionSlot(item);
        plan.JamFault(item);
        Slot tripped = Tripped(plan, item);
        plan.Name($"tripped of {item.Name}", Dimension.One, new SlotSignal(tripped, 1, -0.5), isCondition: true);
        plan.AddPulse(new($"", tripped, s => s[tripped.Index] > 0.5, position, _ => 0));
        plan.AddPulse(new($"", position, s => s[position.Index] > 0.5, tripped, _ => 0));
    }

    /// <summary>In the second pass: opens it by the current that a slot tells.</summary>
    public static void Add(PlanBuilder plan, Item item, Slot amperes)
    {
        double rating = item.Get("rating");
        double cools = item.Get("cools in");
        TripCurve curve = item.Text("trips by") == Magnetic ? s_magnetic : s_thermal;
        Slot holds = plan.Fault(item, "does not trip", ("", 1))[0];
        Slot position = plan.PositionSlot(item);
        int network = plan.NetworkOf(item, Fluid.Charge);
        Amount warmth = LagNumber.Add(plan, network, $"warmth of {item.Name}", Lag.Follower(cools), s => Aim(curve, cools, Math.Abs(s[amperes.Index]) / rating));
        PotentialSignal warm = new(network, warmth);
        plan.Name($"warmth of {item.Name}", Dimension.One, warm);
        plan.AddSwitch(new($"{item.Name} trips.", network, new MarginSignal(warm, 1, 1), s => s[position.Index] > 0.5 && s[holds.Index] < 0.5, Tripped(plan, item), new ConstantSignal(1)));
    }

    private static Slot Tripped(PlanBuilder plan, Item item) => plan.SlotNamed($"tripped of {item.Name}");

    /// <summary>What the warmth goes to, so that it has come to 1 after the time that the curve gives a steady current: 1/(1 − e^(−t/τ)).</summary>
    private static double Aim(TripCurve curve, double cools, double multiple)
    {
        double seconds = curve.SecondsAt(multiple);
        return double.IsFinite(seconds) ? 1 / (1 - Portable.Exp(new Scalar(-seconds / cools)).V) : 0;
    }
}
