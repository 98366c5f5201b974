using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Gas;
using Sightglass.Plant.Kinds.Paths;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.Air;

/// <summary>A shuttle between two pipes: the higher pressure wins.</summary>
public sealed class DoubleCheckKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "double check valve",
        Purpose = "Joins what is behind it with whichever of two pipes has the higher pressure, and shuts the other off.",
        Details = """
            A shuttle that pressure pushes: each way opens by a smooth step over its width about equal pressures, so that what was let in goes out again by the pipe that let it in.
            Source: ISO 6358 for the openings; the shuttle is common practice, no source.
            """,
        Medium = "brake",
        Role = KindRole.Path,
        Symbol = "check",
        Parameters =
        [
            .. PathSheet.Opening,
            Parameter.Item("or from", "The other pipe.", required: true),
            Steer.Width,
        ],
        Quantities = [PathSheet.Flow, new("other flow", Dimension.VolumeFlow, "Free air from the other pipe to its second end.")],
        Faults = [new("stuck", "It stays with its first pipe and shuts the other off for good.", [])],
    };

    public override void Connect(PlanBuilder plan, Item item)
    {
        Slot stuck = plan.Fault(item, "stuck", ("", 1))[0];
        if (GasStore.Named(plan, item, "or from") is not { } other || GasPaths.Component(plan, item) is not { } law || Join.Ends(plan, item) is not var (first, to))
        {
            return;
        }

        double width = Steer.WidthOf(item);
        double[] sheet = GasServo.ParametersOf(law, width, -width / 2, 1, 0, 0, Steer.Highest);
        var open = GasPaths.Between<GasServo>(
            plan, item.Name, first, to, sheet, n => [plan.Bind(n, _ => 0), plan.Bind(n, s => 1 - s[stuck.Index]), plan.Bind(n, s => s[stuck.Index])],
            other.Store.First, first.Store.First, first.Store.First);
        var second = GasPaths.Between<GasServo>(
            plan, $"other way of {item.Name}", other, to, sheet, n => [plan.Bind(n, _ => 0), plan.Bind(n, s => 1 - s[stuck.Index]), plan.Bind(n, _ => 0)],
            first.Store.First, other.Store.First, other.Store.First);
        plan.Name($"flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(to.Network, open, 1 / FreeAir.Density));
        plan.Name($"other flow of {item.Name}", Dimension.VolumeFlow, new FlowSignal(to.Network, second, 1 / FreeAir.Density));
    }
}
