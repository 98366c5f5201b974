using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Sightglass.Network.Groups;
using Sightglass.Plant.Plans;
using Sightglass.World.Agenda;
using Sightglass.World.People;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;

namespace Sightglass.World;

public sealed partial class World
{
    /// <summary>Everything needed to go on from here. Only at rest: after <see cref="RunTo"/>.</summary>
    /// <exception cref="InvalidOperationException">The world is in the middle of something.</exception>
    public WorldSnapshot Save()
    {
        if (_phase != Phase.Ready)
        {
            throw new InvalidOperationException("A snapshot is taken at rest: run to a moment first.");
        }

        if (Overseer is not null)
        {
            throw new InvalidOperationException("A world that is followed is restored from its record.");
        }

        return new()
        {
            Now = Now.Ticks,
            FireAt = _fireAt.Ticks,
            JudgedFrom = _judgedFrom.Ticks,
            Trajectory = _trajectory,
            FiringsSince = _firingsSince.Ticks,
            Fired = _fired.Index().Where(f => f.Item > 0).ToImmutableSortedDictionary(f => f.Index, f => f.Item),
            LeftOut = Plan.LeftOut,
            Networks = [.. Plan.Stepped.Select(SaveNetwork)],
            Slots = Plan.Slots.Select((s, i) => KeyValuePair.Create(s.Name, _slots[i])).ToImmutableSortedDictionary(StringComparer.Ordinal),
            Agenda = [.. Agenda.Entries.ToArray().Select(e => new AgendaSnapshot(e.Time.Ticks, e.Kind, e.Id))],
            People = [.. _people.Select(p => new PersonSnapshot(p.Role.Name, p.Place, p.WalkingTo, p.Walked, p.Protections, [.. p.Permissions.Order(StringComparer.Ordinal)], p.Within, p.Ahead, p.Deed, p.IsHeard))],
            Actions = [.. _actions],
            Faults = [.. _faults.Select(f => f.Slots.Named(CollectionsMarshal.AsSpan(_faultValues).Slice(f.First, f.Slots.Values.Length)))],
            Sentinels = [.. _sentinels.Select(s => new SentinelSnapshot(s.Owner, s.Last))],
            Guards = [.. _guards],
            Answers = _answers is null ? null : new(_answers.From, _answers.To, _answers.Unanswered, _answerSeed, _answerCase, _asked),
            Run = Run?.Save(),
        };
    }

    /// <summary>Goes on from a snapshot of the same plan.</summary>
    /// <param name="snapshot">As saved.</param>
    /// <param name="run">A fresh run of the same card, or null when there was none.</param>
    /// <exception cref="ArgumentException">A name of the snapshot is not in this plan, or the plan leaves out other systems than the snapshot's.</exception>
    public void Restore(WorldSnapshot snapshot, CardRun? run = null)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        if (!snapshot.LeftOut.SequenceEqual(Plan.LeftOut))
        {
            throw new ArgumentException($"The snapshot is of a world that leaves out '{string.Join(", ", snapshot.LeftOut)}', this one leaves out '{string.Join(", ", Plan.LeftOut)}'.", nameof(snapshot));
        }

        Reset();
        Now = Limit = new(snapshot.Now);
        for (int i = 0; i < _slots.Length; i++)
        {
            _slots[i] = snapshot.Slots.TryGetValue(Plan.Slots[i].Name, out double value)
                ? value
                : throw new ArgumentException($"The snapshot lacks '{Plan.Slots[i].Name}'.", nameof(snapshot));
            _bank.SetSlot(_lane, new(i), _slots[i]);
        }

        foreach (ResolverRoom room in _rooms)
        {
            room.Remember(_bank, _lane, _slots);
        }

        ApplySlots();
        foreach (int n in Plan.Stepped)
        {
            RestoreNetwork(n, snapshot.Networks[Plan.Stepped.IndexOf(n)]);
        }

        foreach (AgendaSnapshot entry in snapshot.Agenda)
        {
            Agenda.Add(new(new(entry.Time), entry.Kind, entry.Id));
        }

        foreach (PersonSnapshot p in snapshot.People)
        {
            Person person = new(_people.Count, Plan.Book.Roles[p.Role], p.Place)
            {
                WalkingTo = p.WalkingTo,
                Walked = p.Walked,
                Protections = p.Protections,
                Within = p.Within ?? p.Place,
                Ahead = p.Ahead,
                Deed = p.Deed,
                IsHeard = p.IsHeard,
            };
            person.Permissions.UnionWith(p.Permissions);
            _people.Add(person);
        }

        _actions.AddRange(snapshot.Actions);
        foreach (Situations.DrawnFault fault in snapshot.Faults)
        {
            Situations.FaultSlots slots = Situations.FaultSlots.Of(Plan, fault.Item, fault.Fault);
            slots.Fill(KeepFault(slots), fault.Values);
        }

        (_trajectory, _firingsSince) = (snapshot.Trajectory, new(snapshot.FiringsSince));
        Array.Clear(_fired);
        foreach ((int number, int times) in snapshot.Fired.Where(f => f.Key >= 0 && f.Key < _fired.Length))
        {
            _fired[number] = times;
        }

        _guards.AddRange(snapshot.Guards);
        if (snapshot.Answers is { } a)
        {
            UseAnswers(new(a.From, a.To, a.Unanswered), a.Seed, a.Case);
            _asked = a.Asked;
        }

        RestoreRun(snapshot, run);
        RestoreSentinels(snapshot);
        _restored = snapshot;
        InView = _hasBegun = true;
        _phase = Phase.Propose;
    }

    private void RestoreRun(WorldSnapshot snapshot, CardRun? run)
    {
        if (snapshot.Run is not { } saved)
        {
            return;
        }

        Run = run ?? throw new ArgumentException("The snapshot has a card under way: give its run.", nameof(run));
        run.Restore(this, saved);
    }

    private void RestoreSentinels(WorldSnapshot snapshot)
    {
        foreach (SentinelSnapshot s in snapshot.Sentinels)
        {
            Plant.Signals.Signal margin = s.Owner >= Sentinel.Hazard
                ? _hazards.All[(s.Owner - Sentinel.Hazard) % Sentinel.HazardsAPerson].Margin!
                : Run!.MarginOf(s.Owner);
            AddSentinel(s.Owner, margin, s.Last);
        }
    }

    private NetworkSnapshot SaveNetwork(int network)
    {
        LaneGroup group = _bank.Group(network);
        return new(
            group.Time(_lane).Ticks,
            group.StepSize(_lane),
            group.Steps(_lane) - (group.PendingEnd(_lane) == Basics.Time.SimTime.Never ? 0 : 1),
            [.. Plan.AmountNames[network].Select((name, i) => KeyValuePair.Create(name, group.GetAmount(_lane, new(i))))]);
    }

    private void RestoreNetwork(int network, NetworkSnapshot saved)
    {
        LaneGroup group = _bank.Group(network);
        for (int i = 0; i < saved.Amounts.Length; i++)
        {
            if (Plan.AmountNames[network][i] != saved.Amounts[i].Key)
            {
                throw new ArgumentException($"The snapshot's '{saved.Amounts[i].Key}' is not where this plan has it.", nameof(saved));
            }

            group.SetAmount(_lane, new(i), saved.Amounts[i].Value);
        }

        group.Resume(_lane, new(saved.Committed), saved.StepSize, saved.Steps);
    }
}
