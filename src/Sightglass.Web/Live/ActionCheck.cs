using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.World;

namespace Sightglass.Web.Live;

/// <summary>Refuses what a plan cannot do before it is recorded.</summary>
internal static class ActionCheck
{
    /// <summary>What is wrong with an action, or null.</summary>
    public static string? Fault(Plan plan, WorldAction action) => action switch
    {
        WorldAction.Operate o => Operate(plan, o),
        WorldAction.PutIn p => PutIn(plan, p),
        WorldAction.TakeOut t => HasFault(plan, t.Item, t.Fault) ? null : $"{t.Item} has no fault {t.Fault}",
        WorldAction.SetInput s => !plan.Starts.TryGetValue(s.Name, out StartRule? rule) || rule.Network >= 0 ? $"there is no input {s.Name}" : double.IsFinite(s.Value) ? null : "that is no number",
        _ => "that cannot be done here",
    };

    private static string? Operate(Plan plan, WorldAction.Operate o)
    {
        if (o.Person != -1)
        {
            return "only the instructor operates from here";
        }

        if (!plan.Items.TryGetValue(o.Item, out ItemPlan? known) || known.Position is null)
        {
            return $"{o.Item} cannot be operated";
        }

        Item item = plan.Book.Items[o.Item];
        return item.Positions.Contains(o.Position) ? null : $"{o.Item} has no position {o.Position}; it has {string.Join(", ", item.Positions)}";
    }

    private static string? PutIn(Plan plan, WorldAction.PutIn p)
    {
        if (!HasFault(plan, p.Item, p.Fault))
        {
            return $"{p.Item} has no fault {p.Fault}";
        }

        string? stranger = p.Values.Keys.FirstOrDefault(v => !plan.Items[p.Item].Faults[p.Fault].Any(f => f.Name == v));
        return stranger is not null ? $"{p.Fault} takes no {stranger}" : p.Values.Values.All(double.IsFinite) ? null : "that is no number";
    }

    private static bool HasFault(Plan plan, string item, string fault) =>
        plan.Items.TryGetValue(item, out ItemPlan? known) && known.Faults.ContainsKey(fault);
}
