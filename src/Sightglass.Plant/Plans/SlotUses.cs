using System.Collections.Immutable;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// What is to be worked out anew when a slot moves: bindings, switches and resolvers by their places in the plan. Whatever is not told for a slot comes to what it came to
/// before; too much is told where an item asks for a slot that it does not use.
/// </summary>
public sealed class SlotUses
{
    private readonly int[][] _bindings;
    private readonly int[][] _switches;
    private readonly int[][] _resolvers;
    private readonly int[][] _pulses;

    internal SlotUses(Plan plan, PlanBuilder builder)
    {
        Dictionary<object, ItemTies> owner = new(ReferenceEqualityComparer.Instance);
        foreach (ItemTies item in builder.Ties)
        {
            item.Bindings.ForEach(b => owner[b] = item);
            item.Switches.ForEach(s => owner[s] = item);
        }

        Dictionary<int, ItemTies> setter = builder.ResolverTies.SelectMany(t => t.Sets.Select(s => (Slot: s, Part: t))).ToDictionary(p => p.Slot, p => p.Part);
        SeesState = [.. plan.Switches.Select(s => ReadsOf(builder, s.Margin).Networks.Count > 0)];
        FiresByState = [.. plan.Switches.Select((s, i) => s.FiresAtEvents && (SeesState[i] || ReadsOf(builder, s.To).Networks.Count > 0))];
        StateEvents = [.. Enumerable.Range(0, plan.Switches.Length).Where(i => plan.Switches[i].FiresAtEvents && SeesState[i])];
        EventsOf = [.. plan.NetworkNames.Select((_, n) => StateEvents.Where(i => plan.Switches[i].Network == n).ToImmutableArray())];
        SeenEvents = [.. StateEvents.Where(i => plan.Seen.Contains(plan.Switches[i].Network))];
        int slots = plan.Slots.Length;
        _bindings = Turned(slots, plan.Bindings.Select(b => owner[b].Reads.AsEnumerable()));
        _switches = Turned(slots, plan.Switches.Select(s => owner[s].Reads.Union(ReadsOf(builder, s.Margin).Slots)));
        _resolvers = Turned(slots, plan.Resolvers.Select(r => setter[r.Sets[0].Index].Reads.AsEnumerable()));
        _pulses = Turned(slots, plan.Pulses.Select(p => Enumerable.Repeat(p.Trigger.Index, 1)));
    }

    /// <summary>Of each switch, whether its margin follows the state of a network: that of one that does not stays the same within a step.</summary>
    public ImmutableArray<bool> SeesState { get; }

    /// <summary>Of each switch, whether an event can have it fire and its margin, or what it sets, follows the state of its network.</summary>
    public ImmutableArray<bool> FiresByState { get; }

    /// <summary>Switches whose margin follows the state of a network and can be carried over zero by an event, in order.</summary>
    public ImmutableArray<int> StateEvents { get; }

    /// <summary>The same, of each network.</summary>
    public ImmutableArray<ImmutableArray<int>> EventsOf { get; }

    /// <summary>The same, of the networks that do not stand aside.</summary>
    public ImmutableArray<int> SeenEvents { get; }

    public ReadOnlySpan<int> Bindings(Slot slot) => _bindings[slot.Index];

    public ReadOnlySpan<int> Switches(Slot slot) => _switches[slot.Index];

    public ReadOnlySpan<int> Resolvers(Slot slot) => _resolvers[slot.Index];

    /// <summary>Those whose trigger it is.</summary>
    public ReadOnlySpan<int> Pulses(Slot slot) => _pulses[slot.Index];

    private static SignalReads ReadsOf(PlanBuilder builder, Signal signal)
    {
        SignalReads reads = new(builder.Signals);
        reads.Add(signal);
        return reads;
    }

    /// <summary>From the slots of each user to the users of each slot, in order.</summary>
    private static int[][] Turned(int slots, IEnumerable<IEnumerable<int>> readOfEach)
    {
        List<int>?[] uses = new List<int>?[slots];
        foreach ((int user, IEnumerable<int> read) in readOfEach.Index())
        {
            foreach (int slot in read)
            {
                (uses[slot] ??= []).Add(user);
            }
        }

        return [.. uses.Select(u => u?.ToArray() ?? [])];
    }
}
