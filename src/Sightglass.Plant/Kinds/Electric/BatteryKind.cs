using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;
using Sightglass.Plant.Circuits;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Electric;

/// <summary>An accumulator.</summary>
public sealed class BatteryKind : KindBuilder
{
    /// <summary>
    /// V of a cell by how full the plates are. Between 2 % and 100 % by 0.84 + specific gravity, 1.12 to 1.265 (rule of the trade, from memory); empty it gives way at once, and charged beyond full it rises to where it
    /// gasses (common practice, no source).
    /// </summary>
    private static readonly ImmutableArray<(double X, double Y)> s_cell = [(0, 0), (0.02, 1.96), (1, 2.105), (1.05, 2.35)];

    /// <summary>Plates 5 % beyond full let gas go at the rate that empties the battery in fifty hours (common practice, no source): 1/(0.05·50 h), 1/s.</summary>
    private const double GasRate = 1 / (0.05 * 50 * 3600);

    /// <summary>V by which the electromotive force of a cell moves before the circuit is worked out again; in between its current goes on along a straight line.</summary>
    private const double BandPerCell = 0.004;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "battery",
        Purpose = "An accumulator of lead and acid: charge at the plates, charge that comes after, and what it has inside.",
        Details = """
            What is at the plates makes its voltage; the rest comes after as fast as the levels differ. So a heavy current empties the plates while there is much left, rest brings some of it back, and soon after charging a poor battery shows a good voltage. V = E − I·R.
            Beyond full, plates let gas go. Source: Manwell and McGowan 1993, Lead acid battery storage model; E of a cell is 0.84 + specific gravity of the acid (from memory).
            """,
        Medium = "power",
        Role = KindRole.Path,
        Conducts = true,
        Symbol = "battery",
        Ports = [new("from", "The wire at its minus pole."), new("to", "The wire at its plus pole.")],
        Parameters =
        [
            Parameter.Whole("cells", "How many, in a row: 32 for 64 V.", null, "1", "1000"),
            Parameter.Needed("capacity", Dimension.Ampere * Dimension.Second, "What it gives when it is emptied over many hours.", "0.1 Ah", "100000 Ah"),
            Parameter.Of("inner resistance", Dimension.Resistance, "Of all its cells.", "30 mOhm", "0.01 mOhm", "100 Ohm"),
            Parameter.Of("usual charge", Dimension.One, "How full it is where a situation says nothing; at 103 % one that is charged all the time gasses a little and takes nothing more.", "100 %", "0 %", "105 %"),
            Parameter.Of("at the plates", Dimension.One, "Share of the capacity that is at hand at once.", "30 %", "1 %", "99 %"),
            Parameter.Of("evens out in", Dimension.Second, "Time in which a difference between plates and the rest falls to 37 %.", "1 h", "1 s", "100 h"),
        ],
        Quantities =
        [
            new("voltage", Dimension.Voltage, "Between its poles."),
            new("current", Dimension.Ampere, "What it gives; less than nothing while it is charged."),
            new("charge", Dimension.One, "Share of its capacity that is in it."),
            new("electromotive force", Dimension.Voltage, "What it would show without current."),
            new("gassing", Dimension.Ampere, "The part of the charging current that makes gas."),
        ],
        Faults =
        [
            new("high resistance", "A loose or corroded pole.", [Parameter.Of("resistance", Dimension.Resistance, "Besides its own.", "100 mOhm", "0.1 mOhm", "100 Ohm")]),
            new("dead cells", "Cells that give nothing.", [Parameter.Whole("number", "How many.", "3", "1", "1000")]),
            new("open", "A broken link between cells.", []),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item) => ConductorSheet.NameBoth(plan, item);

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (plan.Circuits.EndsOf(item) is not { } ends)
        {
            return;
        }

        int network = plan.NetworkOf(item, Fluid.Charge);
        (Amount plates, Amount rest) = Stores(plan, item, network);
        double cells = item.Get("cells");
        double capacity = item.Get("capacity");
        double inner = item.Get("inner resistance");
        LineSignal force = new(new PotentialSignal(network, plates, 1 / capacity), [.. s_cell.Select(p => (p.X, p.Y * cells))]);
        plan.Name($"electromotive force of {item.Name}", Dimension.Voltage, force);
        Slot told = plan.SlotNamed($"electromotive force of {item.Name}", s_cell[2].Y * cells);
        plan.Follow("", network, force, BandPerCell * cells, told, _ => true);

        Slot more = plan.Fault(item, "high resistance", ("resistance", 0.1))[0];
        Slot dead = plan.Fault(item, "dead cells", ("number", 3))[0];
        SlotFunction whole = ConductorSheet.Whole(plan, item);
        Input volts = ends.Part.Follow(item.Name, s => Math.Max(0, s[told.Index]) * Math.Max(0, cells - s[dead.Index]) / cells);
        Branch branch = ends.Part.Draft.AddSource(
            item.Name, ends.From, ends.To, inner, volts, ends.Part.Follow(item.Name, s => whole(s) * inner / (inner + s[more.Index])));
        ends.Part.TellVoltage(ConductorSheet.Volts(plan, item), ends.To, ends.From);
        ends.Part.TellCurrent(ConductorSheet.Amperes(plan, item), branch);
        ends.Part.TellSlope(plan.SlotNamed($"slope of {item.Name}"), branch, volts);
        AddCurrents(plan, item, network, plates, told, force, cells);
        plan.Name($"charge of {item.Name}", Dimension.One, new SumSignal([new AmountSignal(network, plates, 1 / capacity), new AmountSignal(network, rest, 1 / capacity)]));
    }

    private static (Amount Plates, Amount Bound) Stores(PlanBuilder plan, Item item, int network)
    {
        NetworkBuilder b = plan.Network(network);
        double capacity = item.Get("capacity");
        double share = item.Get("at the plates");
        TwoWells wells = TwoWells.Of(capacity * item.Get("usual charge"), share, 1 / item.Get("evens out in"));
        Amount plates = b.AddStore<LinearStore>($"plates of {item.Name}", wells.Available, [wells.Start.Available], [capacity * share]).First;
        plan.NameAmounts(network, $"plates of {item.Name}");
        Amount rest = b.AddStore<LinearStore>($"rest of {item.Name}", wells.Bound, [wells.Start.Bound], [capacity * (1 - share)]).First;
        plan.NameAmounts(network, $"rest of {item.Name}");
        b.AddPath<LinearPath>($"evening out of {item.Name}", [plates, rest], [new(plates, rest)], wells.Path, [plan.Bind(network, _ => 1)]);
        string charge = $"charge of {item.Name}";
        plan.AddStart(new(charge, Dimension.One, network, plates, v => v * capacity * share, default, []) { Least = 0, Greatest = 1 });
        plan.StartWith(charge, network, rest, v => v * capacity * (1 - share));
        return (plates, rest);
    }

    /// <summary>What the circuit draws, and what goes away as gas while the plates are beyond full.</summary>
    private static void AddCurrents(PlanBuilder plan, Item item, int network, Amount plates, Slot told, Signal force, double cells)
    {
        double capacity = item.Get("capacity");
        Slot amperes = ConductorSheet.Amperes(plan, item);
        Slot slope = plan.SlotNamed($"slope of {item.Name}");
        Slot dead = plan.Fault(item, "dead cells", ("number", 3))[0];
        NetworkBuilder b = plan.Network(network);
        string given = $"given by {item.Name}";
        Amount drawn = b.AddBoundary<FixedStore>(given, [0]).First;
        plan.NameAmounts(network, given);
        b.AddPath<SlopedFlow>(
            given,
            [plates, drawn],
            [new(plates, drawn)],
            [],
            [
                plan.Bind(network, s => s[amperes.Index]),
                plan.Bind(network, s => Math.Max(0, s[slope.Index]) * CellAt(s[told.Index] / cells).Slope * Math.Max(0, cells - s[dead.Index]) / capacity),
                plan.Bind(network, s => CellAt(s[told.Index] / cells).Level * capacity),
            ]);

        string gassed = $"gas of {item.Name}";
        Amount gone = b.AddBoundary<FixedStore>(gassed, [capacity]).First;
        plan.NameAmounts(network, gassed);
        Slot gassing = plan.SlotNamed($"gassing of {item.Name}");
        double full = s_cell[2].Y * cells;
        PathHandle path = b.AddPath<LinearPath>(gassed, [plates, gone], [new(plates, gone)], LinearPath.ParametersOf(GasRate * item.Get("at the plates")), [plan.Bind(network, s => s[gassing.Index])]);
        plan.AddSwitch(new($"", network, new MarginSignal(force, full + (0.01 * cells), 1), s => s[gassing.Index] < 0.5, gassing, new ConstantSignal(1)));
        plan.AddSwitch(new($"", network, new MarginSignal(force, full, -1), s => s[gassing.Index] > 0.5, gassing, new ConstantSignal(0)));
        plan.Name($"gassing of {item.Name}", Dimension.Ampere, new PositiveSignal(new FlowSignal(network, path)));
    }

    /// <summary>How full the plates are at a voltage of a cell, and V of a cell for each share more.</summary>
    private static (double Level, double Slope) CellAt(double volts)
    {
        int i = 0;
        while (i < s_cell.Length - 2 && volts > s_cell[i + 1].Y)
        {
            i++;
        }

        double slope = (s_cell[i + 1].Y - s_cell[i].Y) / (s_cell[i + 1].X - s_cell[i].X);
        return (s_cell[i].X + ((volts - s_cell[i].Y) / slope), slope);
    }
}
