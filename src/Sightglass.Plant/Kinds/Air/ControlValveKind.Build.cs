using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

public sealed partial class ControlValveKind
{
    /// <summary>Pressure difference that lifts the check valve of the charging hole, and its width, Pa.</summary>
    private const double ChargingCrack = 1000;

    private static string ReleasingOf(Item item) => $"releasing of {item.Name}";

    /// <summary>What a control valve compares the brake pipe with; null for what is none.</summary>
    internal static StoreEnd? ComparedWith(PlanBuilder plan, Item item) =>
        item.Kind.Name != "control valve" ? null : item.Text("release") == Graduated ? plan.FindStore(ReferenceOf(item)) : plan.FindStore(item.From?.Item ?? "");

    private static string ReferenceOf(Item item) => $"reference volume of {item.Name}";

    private static void ConnectGraduated(Parts x)
    {
        GasPaths.Between<GasCheckValve>(
            x.Plan, $"charging of {x.Item.Name}", x.Pipe, x.Auxiliary, GasCheckValve.ParametersOf(x.OpeningOf("charging diameter"), ChargingCrack, ChargingCrack),
            n => [x.Plan.Bind(n, _ => 1), x.Plan.Bind(n, _ => 0)]);
        StoreEnd reference = x.Plan.FindStore(ReferenceOf(x.Item))!;
        GasStore.StartChamber(x.Plan, reference, x.Item.Get("reference volume"), x.Pipe, $"reference pressure of {x.Item.Name}");
        double ratio = x.Item.Get("ratio");
        double width = Steer.WidthOf(x.Item);
        double insensitivity = x.Item.Get("insensitivity");
        Choice? choice = ChoiceOf(x, reference);
        double set = Physical.Atmosphere - (ratio * insensitivity);
        double greatest = Physical.Atmosphere + x.Item.Get("greatest");
        double[] Sheet(double[] opening, double size, double begins) => GasServo.ParametersOf(opening, size, begins, ratio, -ratio, Physical.Atmosphere, greatest);
        Amount[] pilots = [x.Cylinder.Store.First, reference.Store.First, x.Pipe.Store.First];
        Input[] Inputs(int n, SlotFunction works) => [x.Plan.Bind(n, _ => set), x.Plan.Bind(n, works), x.Plan.Bind(n, _ => 0)];
        PathHandle apply = GasPaths.Between<GasServo>(x.Plan, x.Item.Name, x.Auxiliary, x.Cylinder, Sheet(x.Supply, width, 0), n => Inputs(n, x.Works), pilots);
        PathHandle exhaust = GasPaths.Between<GasServo>(
            x.Plan, $"exhaust of {x.Item.Name}", x.Cylinder, Join.Outside(x.Plan, $"exhaust of {x.Item.Name}", x.Cylinder), Sheet(x.OpeningOf("exhaust diameter"), -width, width / 4),
            n => Inputs(n, choice is null ? s => x.Works(s) * x.ExhaustShare(s) : s => x.Works(s) * x.ExhaustShare(s) * choice.Exhausts(s)), pilots);
        NameFlows(x, apply, exhaust);
        Limit(x, apply, exhaust);

        // Open while the brake pipe stands no lower than the insensitivity under the reference volume, shut from there on.
        GasPaths.Between<GasServo>(
            x.Plan, ReferenceOf(x.Item), x.Pipe, reference,
            GasServo.ParametersOf(x.OpeningOf("reference diameter"), -insensitivity / 3, -insensitivity, 1, 0, 0, Steer.Highest),
            n => [x.Plan.Bind(n, _ => 0), x.Plan.Bind(n, _ => 1), x.Plan.Bind(n, choice is null ? _ => 0 : choice.Joins)],
            x.Pipe.Store.First, reference.Store.First, reference.Store.First);
    }

    /// <summary>Lets a handle set the greatest cylinder pressure, where the book says so.</summary>
    private static void Limit(Parts x, params ReadOnlySpan<PathHandle> paths)
    {
        if (x.Item.Parameters.ContainsKey(LimitedBy) && ByPosition.Of(x.Plan, x.Item, LimitedBy, "limits") is { } limit)
        {
            foreach (PathHandle path in paths)
            {
                x.Plan.BindParameter(x.Network, path.FirstParameter + GasServo.GreatestParameter, s => Physical.Atmosphere + limit(s));
            }
        }
    }

    /// <summary>
    /// Whether a valve with a reference volume releases directly, where the book lets an item choose it: a latch that is set as the brake pipe rises by the release difference above the balance, and
    /// falls as the valve applies again or graduated release is chosen. Null where nothing chooses, and after an error.
    /// </summary>
    private static Choice? ChoiceOf(Parts x, StoreEnd reference)
    {
        if (!x.Item.Parameters.TryGetValue(DirectBy, out ParameterValue? by))
        {
            return null;
        }

        if (Steer.ChooserOf(x.Plan, by) is not { } chooser)
        {
            x.Plan.Found.Error("P032", by.Span, $"`{by.Text}` cannot choose how `{x.Item.Name}` releases", "name an item with positions: graduated in its first one, direct in the others; or a relay");
            return null;
        }

        Slot releasing = x.Plan.SlotNamed(ReleasingOf(x.Item));
        double ratio = x.Item.Get("ratio");
        Signal Beyond(double sign, double rise) => new SumSignal(
        [
            new PotentialSignal(x.Network, x.Cylinder.Store.First, sign, sign * ((ratio * (x.Item.Get("insensitivity") - rise)) - Physical.Atmosphere)),
            new PotentialSignal(x.Network, reference.Store.First, -sign * ratio),
            new PotentialSignal(x.Network, x.Pipe.Store.First, sign * ratio),
        ]);
        x.Plan.AddSwitch(new(
            $"{x.Item.Name} releases to the end.", x.Network, Beyond(1, x.Item.Get("release difference")),
            s => s[releasing.Index] < 0.5 && s[chooser.Index] > 0.5 && x.Works(s) > 0.5, releasing, new ConstantSignal(1), Jumps: true));
        x.Plan.AddSwitch(new(
            $"{x.Item.Name} ends its release.", x.Network, new AnySignal([Beyond(-1, 0), new SlotSignal(chooser, -1, 0.5)]),
            s => s[releasing.Index] > 0.5, releasing, new ConstantSignal(0), Jumps: true));
        return new(s => s[releasing.Index], s => s[chooser.Index] > 0.5 ? s[releasing.Index] : 1);
    }

    private static void ConnectDirect(Parts x)
    {
        Slot releasing = x.Plan.SlotNamed(ReleasingOf(x.Item));
        x.Plan.Name($"reference pressure of {x.Item.Name}", Dimension.Pressure, new PotentialSignal(x.Network, x.Auxiliary.Store.First, 1, -Physical.Atmosphere));
        GasPaths.Between<GasIso6358>(
            x.Plan, $"charging of {x.Item.Name}", x.Pipe, x.Auxiliary, x.OpeningOf("charging diameter"), n => [x.Plan.Bind(n, s => s[releasing.Index])]);
        double width = Steer.WidthOf(x.Item);
        double insensitivity = x.Item.Get("insensitivity");
        PathHandle apply = GasPaths.Between<GasServo>(
            x.Plan, x.Item.Name, x.Auxiliary, x.Cylinder, GasServo.ParametersOf(x.Supply, width, 0, 1, 0, 0, Steer.Highest),
            n => [x.Plan.Bind(n, _ => 0), x.Plan.Bind(n, s => x.Works(s) * (1 - s[releasing.Index])), x.Plan.Bind(n, _ => 0)],
            x.Pipe.Store.First, x.Auxiliary.Store.First, x.Auxiliary.Store.First);
        NameFlows(x, apply, GasPaths.Between<GasIso6358>(
            x.Plan, $"exhaust of {x.Item.Name}", x.Cylinder, Join.Outside(x.Plan, $"exhaust of {x.Item.Name}", x.Cylinder), x.OpeningOf("exhaust diameter"),
            n => [x.Plan.Bind(n, s => x.Works(s) * s[releasing.Index] * x.ExhaustShare(s))]));
        DifferenceSignal risen = new(x.Network, x.Pipe.Store.First, x.Auxiliary.Store.First, -x.Item.Get("release difference"));
        DifferenceSignal fallen = new(x.Network, x.Auxiliary.Store.First, x.Pipe.Store.First, -insensitivity);
        x.Plan.AddSwitch(new($"{x.Item.Name} releases.", x.Network, risen, s => s[releasing.Index] < 0.5, releasing, new ConstantSignal(1)));
        x.Plan.AddSwitch(new($"{x.Item.Name} applies.", x.Network, fallen, s => s[releasing.Index] > 0.5, releasing, new ConstantSignal(0)));
    }

    /// <summary>What a chosen direct release does to a valve with a reference volume.</summary>
    /// <param name="Joins">1 while the hole of the reference volume stands open whatever the pressures, else 0.</param>
    /// <param name="Exhausts">1 while the cylinder may empty, 0 while it is held.</param>
    private sealed record Choice(SlotFunction Joins, SlotFunction Exhausts);

    private static void NameFlows(Parts x, PathHandle apply, PathHandle exhaust)
    {
        x.Plan.Name($"flow of {x.Item.Name}", Dimension.VolumeFlow, new FlowSignal(x.Network, apply, 1 / FreeAir.Density));
        x.Plan.Name($"exhaust of {x.Item.Name}", Dimension.VolumeFlow, new FlowSignal(x.Network, exhaust, 1 / FreeAir.Density));
    }
}
