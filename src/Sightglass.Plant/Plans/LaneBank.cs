using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Groups;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>The numbers of eight plants of one plan: a lane group for each network that it steps, and the slots.</summary>
public sealed class LaneBank : IDisposable
{
    private readonly LaneGroup?[] _groups;
    private readonly LaneGroup[] _stepped;
    private readonly StateView[] _views;
    private readonly Lanes[] _slots;
    private long _version;
    private bool _seesEnds;

    public LaneBank(Plan plan, double relativeTolerance = 1e-5)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        _groups = [.. plan.Networks.Select((t, n) => plan.Steps(n) ? new LaneGroup(t, relativeTolerance) : null)];
        _stepped = [.. _groups.OfType<LaneGroup>()];
        _views = new StateView[_groups.Length];
        _slots = new Lanes[plan.Slots.Length];
        int[] guards = new int[_groups.Length];
        GuardOfSwitch = [.. plan.Switches.Select(s => guards[s.Network]++)];
        foreach (int n in plan.Stepped)
        {
            MarginTape margins = plan.MarginsOf(n);
            Group(n).AddGuards(new MarginSheet(this, n, margins), margins.Moves);
        }
    }

    public Plan Plan { get; }

    /// <summary>Guard number of each switch rule within its network's group.</summary>
    public ImmutableArray<int> GuardOfSwitch { get; }

    /// <summary>Counts changes of slots.</summary>
    internal long SlotVersion { get; private set; }

    /// <summary>Counts whatever may change a signal's value in some lane: while it stays, what a signal came to once it comes to again.</summary>
    public long Version
    {
        get
        {
            long version = _version;
            foreach (LaneGroup group in _stepped)
            {
                version += group.Version;
            }

            return version;
        }
    }

    /// <exception cref="InvalidOperationException">The plan does not step this network.</exception>
    public LaneGroup Group(int network) => _groups[network] ?? throw NotStepped(network);

    /// <summary>The state that signals see for a network.</summary>
    /// <exception cref="InvalidOperationException">The plan does not step this network.</exception>
    public StateView View(int network) => _groups[network] is null ? throw NotStepped(network) : _views[network];

    /// <summary>Makes signals see the states at the end of every network's last attempt.</summary>
    public void LookAtEnds()
    {
        if (_seesEnds)
        {
            return;
        }

        _seesEnds = true;
        _version++;
        foreach (int i in Plan.Stepped)
        {
            _views[i] = _groups[i]!.End;
        }
    }

    public Lanes SlotLanes(Slot slot) => _slots[slot.Index];

    public double GetSlot(int lane, Slot slot) =>
        MemoryMarshal.Cast<Lanes, double>(_slots.AsSpan())[(slot.Index * Lanes.Count) + lane];

    /// <summary>Copies a lane's slots out, in order.</summary>
    public void CopySlots(int lane, Span<double> slots)
    {
        ReadOnlySpan<double> all = MemoryMarshal.Cast<Lanes, double>(_slots.AsSpan());
        for (int i = 0; i < _slots.Length; i++)
        {
            slots[i] = all[(i * Lanes.Count) + lane];
        }
    }

    public void SetSlot(int lane, Slot slot, double value)
    {
        _version++;
        SlotVersion++;
        MemoryMarshal.Cast<Lanes, double>(_slots.AsSpan())[(slot.Index * Lanes.Count) + lane] = value;
    }

    /// <summary>
    /// One attempt of a network for lanes of other banks of the plan, all of which have a task. This bank has no plants of its own.
    /// </summary>
    /// <param name="network">By number.</param>
    /// <param name="banks">The banks.</param>
    /// <param name="groups">Their groups of the network.</param>
    /// <param name="pick">The lanes.</param>
    public void IterateFor(int network, ReadOnlySpan<LaneBank> banks, ReadOnlySpan<LaneGroup> groups, LanePick pick)
    {
        ArgumentNullException.ThrowIfNull(pick);
        SlotVersion++;
        _version++;
        for (int b = 0; b < banks.Length; b++)
        {
            if (pick.Has(b))
            {
                LaneShift shift = pick.From(b);
                foreach (int slot in Plan.MarginsOf(network).SlotsRead)
                {
                    _slots[slot] = shift.Apply(banks[b]._slots[slot], _slots[slot]);
                }
            }
        }

        Group(network).IterateFor(groups, pick);
    }

    /// <summary>Lets signals see a given state of one network: used by guards while a step is being judged.</summary>
    internal void LookAt(int network, in StateView state)
    {
        _seesEnds = false;
        _version++;
        _views[network] = state;
    }

    private InvalidOperationException NotStepped(int network) => new($"Nothing may be asked of the system '{Plan.NetworkNames[network]}': it was left out.");

    public void Dispose()
    {
        foreach (LaneGroup group in _stepped)
        {
            group.Dispose();
        }
    }
}
