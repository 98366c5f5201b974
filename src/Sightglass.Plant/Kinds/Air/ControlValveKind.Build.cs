using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
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
        double set = Physical.Atmosphere - (ratio * insensitivity);
        double greatest = Physical.Atmosphere + x.Item.Get("greatest");
        double[] Sheet(double[] opening, double size, double begins) => GasServo.ParametersOf(opening, size, begins, ratio, -ratio, Physical.Atmosphere, greatest);
        Amount[] pilots = [x.Cylinder.Store.First, reference.Store.First, x.Pipe.Store.First];
        Input[] Inputs(int n, SlotFunction works) => [x.Plan.Bind(n, _ => set), x.Plan.Bind(n, works), x.Plan.Bind(n, _ => 0)];
        PathHandle apply = GasPaths.Between<GasServo>(x.Plan, x.Item.Name, x.Auxiliary, x.Cylinder, Sheet(x.Supply, width, 0), n => Inputs(n, x.Works), pilots);
        NameFlows(x, apply, GasPaths.Between<GasServo>(
            x.Plan, $"exhaust of {x.Item.Name}", x.Cylinder, Join.Outside(x.Plan, $"exhaust of {x.Item.Name}", x.Cylinder), Sheet(x.OpeningOf("exhaust diameter"), -width, width / 4),
            n => Inputs(n, s => x.Works(s) * x.ExhaustShare(s)), pilots));

        // Open while the brake pipe stands no lower than the insensitivity under the reference volume, shut from there on.
        GasPaths.Between<GasServo>(
            x.Plan, ReferenceOf(x.Item), x.Pipe, reference,
            GasServo.ParametersOf(x.OpeningOf("reference diameter"), -insensitivity / 3, -insensitivity, 1, 0, 0, Steer.Highest),
            n => [x.Plan.Bind(n, _ => 0), x.Plan.Bind(n, _ => 1), x.Plan.Bind(n, _ => 0)],
            x.Pipe.Store.First, reference.Store.First, reference.Store.First);
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

    private static void NameFlows(Parts x, PathHandle apply, PathHandle exhaust)
    {
        x.Plan.Name($"flow of {x.Item.Name}", Dimension.VolumeFlow, new FlowSignal(x.Network, apply, 1 / FreeAir.Density));
        x.Plan.Name($"exhaust of {x.Item.Name}", Dimension.VolumeFlow, new FlowSignal(x.Network, exhaust, 1 / FreeAir.Density));
    }
}
