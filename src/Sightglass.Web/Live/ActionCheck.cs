using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
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
        WorldAction.TakeOut t => HasFault(plan, t.Item, t.Fault) ? null : Say.With($"{t.Item} has no fault {Say.Word(t.Fault)}"),
        WorldAction.SetInput s => !plan.Starts.TryGetValue(s.Name, out StartRule? rule) || rule.Network >= 0 ? Say.With($"there is no input {Say.Word(s.Name)}") : double.IsFinite(s.Value) ? null : Say.It("that is no number"),
        _ => Say.It("that cannot be done here"),
    };

    private static string? Operate(Plan plan, WorldAction.Operate o)
    {
        if (o.Person != -1)
        {
            return Say.It("only the instructor operates from here");
        }

        if (!plan.Items.TryGetValue(o.Item, out ItemPlan? known) || known.Position is null)
        {
            return Say.With($"{o.Item} cannot be operated");
        }

        Item item = plan.Book.Items[o.Item];
        return item.Positions.Contains(o.Position) ? null : Say.With($"{o.Item} has no position {PositionWords.Of(o.Item, o.Position)}; it has {string.Join(", ", item.Positions.Select(p => PositionWords.Of(o.Item, p)))}");
    }

    private static string? PutIn(Plan plan, WorldAction.PutIn p)
    {
        if (!HasFault(plan, p.Item, p.Fault))
        {
            return Say.With($"{p.Item} has no fault {Say.Word(p.Fault)}");
        }

        string? stranger = p.Values.Keys.FirstOrDefault(v => !plan.Items[p.Item].Faults[p.Fault].Any(f => f.Name == v));
        return stranger is not null ? Say.With($"{Say.Word(p.Fault)} takes no {Say.Word(stranger)}")
            : !p.Values.Values.All(double.IsFinite) ? Say.It("that is no number")
            : plan.Items[p.Item].Item.Kind.Faults.Where(f => f.Name == p.Fault).SelectMany(f => f.Parameters).FirstOrDefault(v => v.IsWhole && p.Values.TryGetValue(v.Name, out double given) && !v.Takes(given)) is { } wrong
                ? Say.With($"{Say.Word(wrong.Name)} must be a whole number from {wrong.Minimum} to {wrong.Maximum}")
            : plan.Items[p.Item].Faults[p.Fault].FirstOrDefault(f => p.Values.TryGetValue(f.Name, out double given) && !f.Knows(given)) is { } unknown
                ? Say.With($"{p.Item} has no {Say.Word(unknown.Name)} {p.Values[unknown.Name]:0}; it has {string.Join(", ", unknown.Known.Order().Select(k => k.ToString("0", CultureInfo.InvariantCulture)))}")
            : null;
    }

    private static bool HasFault(Plan plan, string item, string fault) =>
        plan.Items.TryGetValue(item, out ItemPlan? known) && known.Faults.ContainsKey(fault);
}
