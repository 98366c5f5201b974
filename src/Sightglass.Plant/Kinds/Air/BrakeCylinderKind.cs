using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Kinds.RunningGear;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A cylinder, or several on the same air, whose piston presses brake shoes or pads.</summary>
public sealed class BrakeCylinderKind : KindBuilder
{
    public const string Name = "brake cylinder";
    private const string ActsOn = "acts on";
    private const string Tread = "tread";
    private const string RadiusRatio = "radius ratio";
    private const string ByWayOf = "by way of";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Presses shoes or pads while there is air in it: the piston goes out against its spring, then the pressure rises.",
        Details = """
            Air at 20 °C; the volume is the clearance until the piston moves and the whole when it is out. Force = area·(pressure − pressure at which it is out), never below
            zero; shoe force = force·leverage; retarding force = shoe force·friction·radius ratio, at the rail while no wheel slides (Coulomb's law and the lever). A reduction r of a brake pipe that started at p₀ leaves p = k·r − p_a in a cylinder of 1/k of its auxiliary reservoir's volume (A2-08). Source: ideal gas law.
            """,
        Medium = "brake",
        Role = KindRole.Store,
        Symbol = "cylinder",
        Parameters =
        [
            Parameter.Needed("diameter", Dimension.Metre, "Of the piston.", "10 mm", "1 m"),
            Parameter.Needed("travel", Dimension.Metre, "Of the piston when the brake is on.", "1 mm", "1 m"),
            Parameter.Of("clearance", Dimension.Volume, "Air space with the piston home, with its pipe.", "0.5 L", "0.01 L", "100 L"),
            Parameter.Of("moves at", Dimension.Pressure, "Over the atmosphere, when the piston begins to move.", "4 psi", "0.1 psi", "50 psi"),
            Parameter.Of("out at", Dimension.Pressure, "Over the atmosphere, when it has gone its travel.", "8 psi", "0.2 psi", "80 psi"),
            Parameter.Whole("count", "Cylinders alike that are filled and emptied together; what is written is of one of them.", "1", "1", "32"),
            Parameter.Choice(ActsOn, "Shoes on the treads of the wheels, or pads on discs.", Tread, Tread, "disc"),
            Parameter.Of("leverage", Dimension.One, "Force of its shoes or pads over that of its pistons: levers, less their losses.", "1", "0.1", "50"),
            Parameter.Of("friction", Dimension.One, "Between shoe and tread or pad and disc.", "0.3", "0.01", "1"),
            Parameter.Of(RadiusRatio, Dimension.One, "Of a disc: radius at which its pads rub over that of the wheel. On the tread it is 1.", "1", "0.1", "1"),
            Parameter.Items(ByWayOf, "Brake rods through which parts of its force go to the shoes; what of the force goes through no rod is never lost."),
            AirSheet.StartPressure,
        ],
        Quantities =
        [
            .. AirSheet.Quantities,
            new("force", Dimension.Force, "With which its pistons press together."),
            new("shoe force", Dimension.Force, "With which its shoes or pads press together."),
            new("retarding force", Dimension.Force, "With which they hold its wheels back, at the rail."),
            new("piston travel", Dimension.Metre, "How far its piston is out."),
            new("applied", Dimension.One, "Its piston is out and presses.", IsCondition: true),
        ],
        Faults = [AirSheet.Leak],
    };

    public override Fluid? Holds => Fluid.Gas;

    public override void Declare(PlanBuilder plan, Item item)
    {
        double count = item.Get("count");
        double area = count * Math.PI * item.Get("diameter") * item.Get("diameter") / 4;
        double moves = item.Get("moves at");
        double isOut = item.Get("out at");
        if (isOut <= moves)
        {
            plan.Found.Error("P023", item.Parameters["out at"].Span, $"the piston of `{item.Name}` is out before it moves", "let `out at` be above `moves at`");
            return;
        }

        if (item.Text(ActsOn) == Tread && item.Get(RadiusRatio) != 1)
        {
            plan.Found.Error("P031", item.Parameters[RadiusRatio].Span, $"`{item.Name}` presses shoes on treads, where `{RadiusRatio}` is 1", $"write `{ActsOn}: disc`, or leave it out");
            return;
        }

        int network = plan.NetworkOf(item, Fluid.Gas);
        double clearance = count * item.Get("clearance");
        double[] sheet = PistonGasStore.ParametersOf(
            clearance, area * item.Get("travel"), Physical.Atmosphere + moves, Physical.Atmosphere + isOut, Physical.AirGasConstant * FreeAir.Temperature);
        double start = PistonGasStore.AmountAt(sheet, Physical.Atmosphere + item.Get("start pressure"));
        StoreHandle store = plan.Network(network).AddStore<PistonGasStore>(item.Name, sheet, [start], [GasStore.Span]);
        GasStore.Register(plan, item, network, store, p => PistonGasStore.AmountAt(sheet, p));
        PotentialSignal pressing = new(network, store.First, 1, -Physical.Atmosphere - isOut);
        Signal Pressing(double perPascal) => new PositiveSignal(new PotentialSignal(network, store.First, perPascal, -perPascal * (Physical.Atmosphere + isOut)));
        double shoes = area * item.Get("leverage");
        plan.Name($"force of {item.Name}", Dimension.Force, Pressing(area));
        Signal? left = Left(plan, item);
        Signal Arriving(double perPascal) => left is null ? Pressing(perPascal) : new ProductSignal(Pressing(perPascal), left);
        plan.Name($"shoe force of {item.Name}", Dimension.Force, Arriving(shoes));
        plan.Name($"retarding force of {item.Name}", Dimension.Force, Arriving(shoes * item.Get("friction") * item.Get(RadiusRatio)));
        plan.Name($"piston travel of {item.Name}", Dimension.Metre, new TravelSignal(network, store.First, Physical.AirGasConstant * FreeAir.Temperature, clearance, area));
        plan.Name($"applied of {item.Name}", Dimension.One, pressing, isCondition: true);
    }

    public override void Connect(PlanBuilder plan, Item item) => GasStore.Leak(plan, item);

    /// <summary>Share of the force that arrives at the shoes; null where no rod can break, and after an error.</summary>
    private static SumSignal? Left(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue(ByWayOf, out ParameterValue? named))
        {
            return null;
        }

        List<Item> rods = [];
        foreach (string name in named.Names)
        {
            if (plan.Book.Items.TryGetValue(name, out Item? rod) && rod.Kind.Name == BrakeRodKind.Name)
            {
                rods.Add(rod);
            }
            else
            {
                plan.Found.Error("P056", named.Span, $"`{name}` is no rod of `{item.Name}`", Nearest.DidYouMean(name, plan.Book.Items.Values.Where(i => i.Kind.Name == BrakeRodKind.Name).Select(i => i.Name)) ?? "name an item of the kind `brake rod`");
            }
        }

        if (rods.Sum(r => r.Get("share")) > 1 + 1e-9)
        {
            plan.Found.Error("P057", named.Span, $"the rods of `{item.Name}` pass on more than all of its force", "let their shares come to 100 % together, or less");
            return null;
        }

        return new([new ConstantSignal(1), .. rods.Select(r => BrakeRodKind.Lost(plan, r))]);
    }
}
