using Sightglass.Basics.Draws;
using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;

namespace Sightglass.World;

public sealed partial class World
{
    private ulong _trajectory;

    /// <summary>Hash of every committed moment and amount so far, of the networks that are stepped.</summary>
    public ulong Hash => _trajectory;

    /// <summary>What a slot holds now.</summary>
    public double GetSlot(Slot slot) => _slots[slot.Index];

    /// <summary>The committed amount of a network's store.</summary>
    public double GetAmount(int network, Amount amount) => _bank.Group(network).GetAmount(_lane, amount);

    /// <summary>A signal's value from what is in view: only while something happens (in <see cref="OnSample"/>, say).</summary>
    public double Value(Plant.Signals.Signal signal)
    {
        ArgumentNullException.ThrowIfNull(signal);
        if (_blind)
        {
            throw new InvalidOperationException("Nothing is in view: this event was said not to look at the machine.");
        }

        Resolve();
        return signal.Evaluate(_bank)[_lane];
    }

    /// <summary>Sets a slot and what follows from it at once. Networks follow when the moment is over.</summary>
    public void SetSlot(Slot slot, double value)
    {
        if (_slots[slot.Index] == value)
        {
            return;
        }

        _slotsMoved = true;
        _slots[slot.Index] = value;
        _bank.SetSlot(_lane, slot, value);
        _bindingsMoved.Add(_uses.Bindings(slot));
        _switchesMoved.Add(_uses.Switches(slot));
        _roomsMoved.Add(_uses.Resolvers(slot));
        foreach (int i in _uses.Pulses(slot))
        {
            PulseRule pulse = Plan.Pulses[i];
            if (pulse.When(_slots))
            {
                Tell(pulse.Name);
                SetSlot(pulse.Sets, pulse.To(_slots));
            }
        }
    }

    /// <summary>Sets a starting amount: before the first step only. Of a network that is left out there is none to be set.</summary>
    public void SetStartAmount(int network, Amount amount, double value)
    {
        if (Plan.Steps(network))
        {
            _bank.Group(network).SetAmount(_lane, amount, value);
        }
    }

    /// <summary>
    /// Whether any input, parameter or switch would be another by the slots as they are. Where none is, what was marked is as it was worked out last.
    /// </summary>
    /// <param name="inView">Whether the state at the clock's moment is in view; where it is not, no slot has moved that carries a margin over zero together with a state.</param>
    private bool SlotsChangeAnything(bool inView)
    {
        for (int i = _bindingsMoved.From(0); i >= 0; i = _bindingsMoved.From(i + 1))
        {
            if (Plan.Bindings[i].Value(_slots) != _applied[i])
            {
                return true;
            }
        }

        for (int i = _switchesMoved.From(0); i >= 0; i = _switchesMoved.From(i + 1))
        {
            SwitchRule rule = Plan.Switches[i];
            bool armed = IsArmed(i);
            if (armed != rule.When(_slots) || (rule.FiresAtEvents && armed && IsBeyond(rule)))
            {
                return true;
            }
        }

        foreach (int i in _uses.SeenEvents)
        {
            if (inView && !_switchesMoved[i] && IsArmed(i) && IsBeyond(Plan.Switches[i]))
            {
                return true;
            }
        }

        _bindingsMoved.Clear();
        _switchesMoved.Clear();
        return false;
    }

    private bool IsArmed(int rule) => _bank.Group(Plan.Switches[rule].Network).IsArmed(_lane, _bank.GuardOfSwitch[rule]);

    /// <summary>Hands the networks what follows from the slots; fires switches that are armed beyond their crossing.</summary>
    /// <returns>False where networks that stand aside must be cut first.</returns>
    private bool ApplySlots()
    {
        if (_cutting)
        {
            Trace();
            _cutting = false;
        }

        bool again = true;
        while (again && Trouble is null)
        {
            Resolve();
            if (!AreCut())
            {
                return false;
            }

            for (int i = _bindingsMoved.From(0); i >= 0; i = _bindingsMoved.From(i + 1))
            {
                Apply(Plan.Bindings[i], ref _applied[i]);
            }

            _bindingsMoved.Clear();
            again = ArmSwitches();
        }

        _slotsMoved = false;
        ForgetViews();
        return true;
    }

    private void Apply(Binding binding, ref double applied)
    {
        double value = binding.Value(_slots);
        if (value == applied)
        {
            return;
        }

        applied = value;
        LaneGroup group = _bank.Group(binding.Network);
        if (binding.Parameter >= 0)
        {
            group.SetParameter(_lane, binding.Parameter, value);
        }
        else
        {
            group.SetInput(_lane, binding.Input, value);
        }

        if (_isAside[binding.Network])
        {
            _switchesMoved.Add(_uses.EventsOf[binding.Network].AsSpan()); // flows jump
        }
    }

    /// <returns>True when a switch fired at once, so that bindings must be worked out again.</returns>
    private bool ArmSwitches()
    {
        _switchesMoved.Add(_uses.SeenEvents.AsSpan());
        for (int i = _switchesMoved.From(0); i >= 0; i = _switchesMoved.From(i + 1))
        {
            SwitchRule rule = Plan.Switches[i];
            bool wanted = rule.When(_slots);
            bool armed = IsArmed(i);
            bool newly = wanted && (rule.FiresAtEvents || !armed);
            if (armed != wanted)
            {
                _bank.Group(rule.Network).Arm(_lane, _bank.GuardOfSwitch[i], wanted);
            }

            if (newly && InView && IsBeyond(rule))
            {
                Fire(i);
                return true;
            }
        }

        if (InView)
        {
            _switchesMoved.Clear();
        }

        return false;
    }

    private bool IsBeyond(SwitchRule rule) => rule.Margin.Evaluate(_bank)[_lane] >= 0;

    /// <summary>
    /// At the start everything that is told on is told as it is, and what stands beyond its crossing already has crossed: a governor over a full reservoir has unloaded.
    /// </summary>
    private void SettleFirst()
    {
        foreach (SwitchRule rule in Plan.Switches)
        {
            if (rule.When(_slots) && (rule.Follows || IsBeyond(rule)))
            {
                SetSlot(rule.Sets, rule.To.Evaluate(_bank)[_lane]);
            }
        }
    }

    /// <summary>False only at the very start, when nothing has been looked at yet.</summary>
    private bool InView { get; set; }

    private void FireSwitches()
    {
        if (!_pendingFirings)
        {
            return;
        }

        _pendingFirings = false;
        for (int i = 0; i < Plan.Switches.Length; i++)
        {
            SwitchRule rule = Plan.Switches[i];
            LaneGroup group = _bank.Group(rule.Network);
            if (group.Time(_lane) == Now && group.PendingEnd(_lane) == SimTime.Never && group.HasFired(_lane, _bank.GuardOfSwitch[i]) && rule.When(_slots))
            {
                Fire(i);
            }
        }
    }

    private void Fire(int number)
    {
        if (Now - _firingsSince > SimTime.FromSeconds(1))
        {
            _firingsSince = Now;
            Array.Clear(_fired);
        }

        SwitchRule rule = Plan.Switches[number];
        int most = rule.Follows ? MostTellingsASecond : MostFiringsASecond;
        if (++_fired[number] > most)
        {
            string told = rule.Name.Format.Length > 0 ? FormattableString.Invariant(rule.Name) : "something that is not told";
            Trouble = FormattableString.Invariant($"more than {most} firings in a second of: {told}");
            return;
        }

        if (!rule.Follows)
        {
            Tell(rule.Name);
        }

        SetSlot(rule.Sets, rule.To.Evaluate(_bank)[_lane]);
    }

    private void Tell(FormattableString plant)
    {
        if (plant.Format.Length > 0)
        {
            Note(JournalKind.Plant, plant);
        }
    }

    /// <summary>Takes the committed state into the trajectory's hash.</summary>
    private void Trace()
    {
        _trajectory = TrajectoryHash.Add(_trajectory, Now.Ticks);
        foreach (int n in _seen)
        {
            TraceAmounts(n);
        }
    }

    /// <summary>The same of one network that stands aside.</summary>
    private void TraceAside(int network)
    {
        if (_isAside[network])
        {
            _trajectory = TrajectoryHash.Add(_trajectory, Now.Ticks);
            TraceAmounts(network);
        }
    }

    private void TraceAmounts(int network)
    {
        LaneGroup group = _bank.Group(network);
        for (int i = 0; i < group.Topology.Amounts; i++)
        {
            _trajectory = TrajectoryHash.Add(_trajectory, group.GetAmount(_lane, new(i)));
        }
    }
}
