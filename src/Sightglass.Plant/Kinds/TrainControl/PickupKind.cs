using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Kinds.TrainControl;

/// <summary>A coil that hangs over a rail and hears the current in it.</summary>
public sealed class PickupKind : KindBuilder
{
    private const string Hears = "hears";
    private const string Height = "height over rail";

    /// <summary>m over the rail, below which it drags on it.</summary>
    private const double Touching = 0.01;

    public override KindSheet Sheet { get; } = new()
    {
        Name = "pickup",
        Purpose = "A bar with a coil that hangs over a rail ahead of the first axle and hears the code in it.",
        Details = """
            Its voltage goes with the current in the rail and falls with its height over it: the field of a long straight wire. Source: Ampère's law, B = µ₀·I/(2π·r); what the other rail and the sleepers do is left out.
            """,
        Medium = "control",
        Role = KindRole.Signal,
        Symbol = "coil",
        Parameters =
        [
            Parameter.Items(Hears, "Code senders whose currents flow in the rail below it."),
            Parameter.Of("usual height", Dimension.Metre, "Over the rail, as it is set.", "150 mm", "20 mm", "1 m"),
            Parameter.Of("gives", Dimension.Voltage, "At that height over a current of 1 A.", "100 mV", "1 mV", "10 V"),
        ],
        Quantities = [new(Height, Dimension.Metre, "As it hangs now."), new("signal", Dimension.Voltage, "What it gives while the current is not broken.")],
        Faults =
        [
            new("hangs low", "Its bracket has bent or slipped down.", [Parameter.Of("by", Dimension.Metre, "So much lower.", "50 mm", "1 mm", "900 mm")]),
            new("hangs high", "It was set too high, or pushed up.", [Parameter.Of("by", Dimension.Metre, "So much higher.", "80 mm", "1 mm", "900 mm")]),
            new("open", "Its coil or the cable to it is broken.", []),
        ],
    };

    public override void Declare(PlanBuilder plan, Item item)
    {
        Slot low = plan.Fault(item, "hangs low", ("by", 0.05))[0], high = plan.Fault(item, "hangs high", ("by", 0.08))[0], open = plan.Fault(item, "open", ("", 1))[0];
        double usual = item.Get("usual height");
        SumSignal height = new([new SlotSignal(low, -1, usual), new SlotSignal(high)]);
        plan.Name($"{Height} of {item.Name}", Dimension.Metre, height);
        ImmutableArray<Signal> heard = [.. Senders(plan, item).Select(s => CodeSenderKind.Current(plan, s))];
        // On the rail it hears no more than a finger's breadth over it.
        ProductSignal over = new(new SumSignal(heard), new QuotientSignal(new ConstantSignal(usual), new SumSignal([new ConstantSignal(Touching), new PositiveSignal(new SumSignal([height, new ConstantSignal(-Touching)]))])));
        plan.Name($"signal of {item.Name}", Dimension.Voltage, new ProductSignal(over, new SlotSignal(open, -item.Get("gives"), item.Get("gives"))));
    }

    private static IEnumerable<Item> Senders(PlanBuilder plan, Item item)
    {
        if (!item.Parameters.TryGetValue(Hears, out ParameterValue? named))
        {
            yield break;
        }

        foreach (string name in named.Names)
        {
            if (plan.Book.Items.TryGetValue(name, out Item? sender) && sender.Kind.Name == CodeSenderKind.Name)
            {
                yield return sender;
            }
            else
            {
                plan.Found.Error("P058", named.Span, $"`{name}` sends no code that `{item.Name}` could hear", Nearest.DidYouMean(name, plan.Book.Items.Values.Where(i => i.Kind.Name == CodeSenderKind.Name).Select(i => i.Name)) ?? "name an item of the kind `code sender`");
            }
        }
    }
}
