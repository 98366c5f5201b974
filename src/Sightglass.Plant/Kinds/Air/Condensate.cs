using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Stores;
using Sightglass.Plant.Calculators;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>Water at the bottom of a vessel that a compressor fills.</summary>
internal static class Condensate
{
    private const string Compressor = "collects water of";
    private const string Cooler = "cooled by";
    private const string Drains = "drained by";
    private const string Humidity = "humidity";
    private const string Freezes = "freezes drains at";
    private const double WaterDensity = 1000;
    private const double Freezing = 273.15;

    /// <summary>s in which an open drain blows out all but 1/e of the water: our choice, a second or two by ear.</summary>
    private const double DrainTime = 2;

    public static readonly KindParameter[] Parameters =
    [
        Parameter.Item(Compressor, "The compressor that fills it: what its air brings falls out as it cools. No water where nothing is written."),
        Parameter.Item(Cooler, "The air cooler through which it comes; as cold as it is outside where none is named."),
        Parameter.Items(Drains, "Drain cocks at its lowest point: open, they blow the water out."),
        Parameter.Of(Freezes, Dimension.Volume, "So much water freezes shut those drains that are closed while it is below 0 °C outside; never where nothing is written.", least: "1 mL", most: "1 m^3"),
        Parameter.Of(Humidity, Dimension.One, "Of the air that is drawn, relative.", "60 %", "1 %", "100 %"),
    ];

    public static readonly KindQuantity Quantity = new("water", Dimension.Volume, "Liquid at its bottom; none where it collects none.");

    public static void Connect(PlanBuilder plan, Item item)
    {
        string name = $"water of {item.Name}";
        if (!item.Parameters.TryGetValue(Compressor, out ParameterValue? named) || plan.FindStore(item.Name) is not { } inside)
        {
            plan.Name(name, Dimension.Volume, new ConstantSignal(0));
            return;
        }

        if (GasStore.ItemNamed(plan, item, Compressor) is not { Kind.Name: CompressorKind.Name } compressor || CompressorKind.Turning(plan, compressor) is not { } turns)
        {
            plan.Found.Error("P029", named.Span, $"`{named.Text}` brings no water to `{item.Name}`", "name an item of the kind `compressor`");
            return;
        }

        ImmutableArray<Item> cocks = CocksOf(plan, item);
        SlotFunction[] openings = [.. cocks.Select(c => DrainCockKind.Opening(plan, c))];
        double humidity = item.Get(Humidity);
        Slot ambient = plan.SlotNamed(WorldInput.AmbientTemperature);
        SlotFunction comes = Comes(plan, item, ambient);
        NetworkBuilder b = plan.Network(inside.Network);
        Amount water = b.AddStore<FollowerStore>(name, [], [0], [1]).First;
        plan.NameAmounts(inside.Network, name);
        double[] law = Condensation.ParametersOf(CompressorKind.LawOf(compressor), Physical.Atmosphere, DrainTime);
        b.AddPath<Condensation>(name, [water, water, inside.Store.First], [new(Amount.None, water)], law,
        [
            plan.Bind(inside.Network, turns),
            plan.Bind(inside.Network, s => Brought(s[ambient.Index], humidity)),
            plan.Bind(inside.Network, s => MoistAir.MassRatio * MoistAir.SaturationPressure(comes(s)) / Brought(s[ambient.Index], humidity)),
            plan.Bind(inside.Network, s => MoistAir.SaturationPressure(comes(s))),
            plan.Bind(inside.Network, s => Sum(openings, s)),
        ]);
        PotentialSignal volume = new(inside.Network, water, 1 / WaterDensity);
        plan.Name(name, Dimension.Volume, volume);
        plan.AddStart(new(name, Dimension.Volume, inside.Network, water, v => v * WaterDensity, default, []) { Least = 0 });
        if (item.Find(Freezes) is { } enough)
        {
            AllSignal ices = new([new MarginSignal(volume, enough, 1), new MarginSignal(new SlotSignal(ambient), Freezing, -1)]);
            foreach (Item cock in cocks)
            {
                (Slot shut, Slot position) = (DrainCockKind.FrozenShut(plan, cock), plan.PositionSlot(cock));
                plan.AddSwitch(new($"{cock.Name} freezes.", inside.Network, ices, s => s[shut.Index] < 0.5 && s[position.Index] < 0.5, shut, new ConstantSignal(1), Jumps: true));
            }
        }
    }

    private static double Brought(double temperature, double humidity) => MoistAir.Ratio(humidity * MoistAir.SaturationPressure(temperature), Physical.Atmosphere);

    /// <summary>K of the air as it comes in.</summary>
    private static SlotFunction Comes(PlanBuilder plan, Item item, Slot ambient)
    {
        if (!item.Parameters.TryGetValue(Cooler, out ParameterValue? named))
        {
            return s => s[ambient.Index];
        }

        if (GasStore.ItemNamed(plan, item, Cooler) is not { Kind.Name: AirCoolerKind.Name } cooler)
        {
            plan.Found.Error("P061", named.Span, $"`{named.Text}` does not cool the air of `{item.Name}`", "name an item of the kind `air cooler`");
            return s => s[ambient.Index];
        }

        Slot warmer = AirCoolerKind.Warmer(plan, cooler);
        return s => s[ambient.Index] + s[warmer.Index];
    }

    private static ImmutableArray<Item> CocksOf(PlanBuilder plan, Item item)
    {
        ImmutableArray<Item>.Builder cocks = ImmutableArray.CreateBuilder<Item>();
        ParameterValue? named = item.Parameters.GetValueOrDefault(Drains);
        foreach (string name in named?.Names ?? [])
        {
            if (plan.Book.Items.TryGetValue(name, out Item? drain) && drain.Kind.Name == DrainCockKind.Name)
            {
                cocks.Add(drain);
            }
            else
            {
                plan.Found.Error("P030", named!.Span, $"`{name}` is no drain cock of `{item.Name}`", "name items of the kind `drain cock`");
            }
        }

        return cocks.ToImmutable();
    }

    private static double Sum(SlotFunction[] openings, ReadOnlySpan<double> slots)
    {
        double sum = 0;
        foreach (SlotFunction opening in openings)
        {
            sum += opening(slots);
        }

        return sum;
    }
}
