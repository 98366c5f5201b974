using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>What items tell that send signals: transmitters, governors.</summary>
internal static class Told
{
    /// <summary>What an item told last.</summary>
    public static Slot By(PlanBuilder plan, Item sender) => plan.SlotNamed($"told by {sender.Name}");

    /// <summary>What the item named by a parameter told, held between 0 and 1; null after an error.</summary>
    public static SlotFunction? Share(PlanBuilder plan, Item item, string parameter)
    {
        if (!item.Parameters.TryGetValue(parameter, out ParameterValue? by) || by.Names.Length == 0
            || !plan.Book.Items.TryGetValue(by.Names[0], out Item? sender) || sender.Kind.Role != KindRole.Signal)
        {
            IEnumerable<string> senders = plan.Book.Items.Values.Where(i => i.Kind.Role == KindRole.Signal).Select(i => i.Name);
            plan.Found.Error("P016", by?.Span ?? item.Span, $"`{by?.Text}` cannot move `{item.Name}`", Nearest.DidYouMean(by?.Text ?? "", senders) ?? "name a transmitter");
            return null;
        }

        Slot told = By(plan, sender);
        return s => Math.Clamp(s[told.Index], 0, 1);
    }
}
