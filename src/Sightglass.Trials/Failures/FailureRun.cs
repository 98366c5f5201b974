using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.Trials.Causes;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Failures;

/// <summary>
/// What happens if something fails: the machine in service is run for some time without the failure and with it, in the same case, and compared. Every fault is as it is where nothing is said of it.
/// </summary>
public static class FailureRun
{
    /// <summary>How long a failure has shown itself.</summary>
    public static readonly SimTime Usual = SimTime.FromSeconds(300);

    private const ulong Seed = 1;

    /// <param name="plan">Of the machine or the train of the situation.</param>
    /// <param name="situation">In which the machine is in service and nothing is wrong.</param>
    /// <param name="items">What fails, each by itself.</param>
    /// <param name="time">How long it is run.</param>
    /// <param name="stop">Gives up.</param>
    /// <returns>Every fault of every item, in their order. Empty for items that are described and not alive.</returns>
    public static ImmutableArray<Failure> Of(Plan plan, Situation situation, IReadOnlyList<Item> items, SimTime time, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(items);
        SituationStart start = SituationStart.Bind(plan, situation, []) ?? throw new ArgumentException("The situation does not fit the plan.", nameof(situation));
        (Item Item, string Fault)[] faults = [.. items.SelectMany(i => plan.Items.TryGetValue(i.Name, out ItemPlan? p) ? p.Faults.Keys.Select(f => (i, f)) : [])];
        if (faults.Length == 0)
        {
            return [];
        }

        ImmutableArray<Look> looks = Look.AllOf(plan);
        Fact[] facts = [.. plan.Book.FactsInOrder];
        Seen?[] seen = new Seen?[faults.Length + 1];
        string?[] trouble = new string?[seen.Length];
        using LaneRunner runner = new(plan);
        runner.Run(seen.Length, time, Begin, (world, i) => seen[i] = Seen.Of(world, looks, facts), (world, i) => trouble[i] = world.Trouble, stop);
        if (seen[0] is not { } whole)
        {
            return [];
        }

        ImmutableArray<CardNeeds> cards = seen.Any(s => s is { Missing.Length: > 0 }) ? CardNeeds.Of(plan.Book) : [];
        return [.. faults.Select((f, i) => FailureAccess.Add(Compared(plan, f.Item, f.Fault, looks, facts, whole, seen[i + 1], trouble[i + 1]), plan, cards, seen[i + 1]?.Shut ?? [], seen[i + 1]?.Missing ?? []))];

        void Begin(World.World world, int i)
        {
            start.Apply(world, Seed, 0);
            if (i > 0)
            {
                (Item item, string fault) = faults[i - 1];
                world.Do(new World.WorldAction.PutIn(item.Name, fault, ValuesOf(plan.Items[item.Name], fault)), SimTime.Zero);
            }
        }
    }

    /// <summary>Values of a fault that are not as usual: an instrument that shows wrong does so by a tenth of its scale.</summary>
    private static ImmutableSortedDictionary<string, double> ValuesOf(ItemPlan plan, string fault) =>
        plan.Faults[fault][0] is { Usual: 0, Name: var name } && plan.Item.Reading is { } reading
            ? ImmutableSortedDictionary<string, double>.Empty.Add(name, (reading.Maximum - reading.Minimum) / 10)
            : ImmutableSortedDictionary<string, double>.Empty;

    private static Failure Compared(Plan plan, Item item, string fault, ImmutableArray<Look> looks, Fact[] facts, Seen whole, Seen? with, string? trouble)
    {
        if (with is null)
        {
            return new(item, fault, [], [], [], trouble ?? "");
        }

        int at = item.Places.IsEmpty ? 0 : Math.Max(0, plan.Ways.IndexOf(item.Places[0]));
        FailureChange[] changes = [.. looks.Select((l, i) => new FailureChange(l, whole.Shown[i], with.Shown[i])).Where(c => Math.Abs(c.Is - c.Was) > c.Look.Slack)];
        return new(item, fault, [.. facts.Where((_, i) => whole.Holds[i] && !with.Holds[i])], [.. facts.Where((_, i) => !whole.Holds[i] && with.Holds[i])],
            [.. changes.OrderBy(c => c.Look.Places.Min(p => plan.Ways.Seconds(at, p)))], null);
    }

    /// <param name="Shown">By the looks.</param>
    /// <param name="Holds">By the facts.</param>
    /// <param name="Shut">Items that nobody gets by.</param>
    /// <param name="Missing">What cannot be had.</param>
    private sealed record Seen(double[] Shown, bool[] Holds, ImmutableSortedSet<string> Shut, ImmutableArray<Kit> Missing)
    {
        public static Seen Of(World.World world, ImmutableArray<Look> looks, Fact[] facts) => new(
            [.. looks.Select(l => l.See(world))],
            [.. facts.Select(f => world.Value(world.Plan.Facts[f.Name]) >= 0)],
            [.. world.Plan.Access.Gates.Where(world.IsShut)],
            [.. world.Plan.Access.Kits.Where(world.IsMissing)]);
    }
}
