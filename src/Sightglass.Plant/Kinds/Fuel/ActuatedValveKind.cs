using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Plant.Kinds.Common;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>A valve that stands as far open as a transmitter tells it.</summary>
public sealed class ActuatedValveKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "actuated valve",
        Purpose = "Stands as far open as a transmitter tells it, also one of another system.",
        Details = "The opening is the share told, held between 0 and 1, of that of an orifice. Source as for the orifice.",
        Medium = "fuel",
        Role = KindRole.Path,
        Symbol = "valve",
        Parameters = [Parameter.Item("opened by", "The transmitter.", required: true), .. PathSheet.Opening],
        Quantities = [PathSheet.Flow],
    };

    /// <summary>What a transmitter told, held between 0 and 1; null after an error.</summary>
    public static SlotFunction? ShareTold(PlanBuilder plan, Item item, string parameter)
    {
        if (!item.Parameters.TryGetValue(parameter, out ParameterValue? by) || by.Names.Length == 0
            || !plan.Book.Items.TryGetValue(by.Names[0], out Item? sender) || sender.Kind.Role != KindRole.Signal)
        {
            IEnumerable<string> senders = plan.Book.Items.Values.Where(i => i.Kind.Role == KindRole.Signal).Select(i => i.Name);
            plan.Found.Error("P016", by?.Span ?? item.Span, $"`{by?.Text}` cannot move `{item.Name}`", Nearest.DidYouMean(by?.Text ?? "", senders) ?? "name a transmitter");
            return null;
        }

        Slot told = TransmitterKind.ToldBy(plan, sender);
        return s => Math.Clamp(s[told.Index], 0, 1);
    }

    public override void Connect(PlanBuilder plan, Item item)
    {
        if (ShareTold(plan, item, "opened by") is { } share && LiquidJoin.Opening(plan, item) is { } law)
        {
            LiquidJoin.Add<LiquidOrifice>(plan, item, law, LiquidOrifice.OffsetParameter, network => [plan.Bind(network, share)]);
        }
    }
}
