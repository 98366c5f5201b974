using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Watches;

namespace Sightglass.World.Runs;

/// <summary>
/// A card being worked: which program (the letter settled by what is seen), which operation, and how it ended. Cases in which the
/// card is not to be used are told apart from the start.
/// </summary>
public sealed partial class CardRun
{
    private readonly ImmutableArray<ProgramChoice> _choices;
    private readonly MarginCache _margins;
    private readonly double[] _written;
    private readonly int[] _counters;
    private World _world = null!;
    private Person _holder = null!;
    private ImmutableArray<ProgramLooks> _looks = [];
    private CardProgram? _program;
    private int _choice;
    private readonly Strand[] _strands;
    private Strand _at;
    private SimTime _roundBegan;
    private bool _judging;
    private bool _noticing;
    private bool _prepared;

    /// <summary>Number of the deadline by which the card must have been of use.</summary>
    private const int NeverUsed = 2;

    /// <param name="choices">A program for each thing the letter may stand for; the first whose sign holds is run.</param>
    /// <param name="margins">Kept from run to run of one thread, so that nothing is made twice; null for a run alone.</param>
    public CardRun(ImmutableArray<ProgramChoice> choices, MarginCache? margins = null)
    {
        if (choices.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A card needs a program.", nameof(choices));
        }

        _choices = choices;
        _margins = margins ?? new();
        _written = new double[choices.Max(c => c.Program.Names.Length)];
        _counters = new int[choices.Max(c => c.Program.Counters)];
        _strands = [.. Enumerable.Range(0, 1 + choices.Max(c => c.Program.MostAtOnce)).Select(n => new Strand(n))];
        _at = _strands[0];
    }

    /// <summary>Whether the world rests when the card has ended: so for trials; a lesson goes on.</summary>
    public bool RestAtEnd { get; init; } = true;

    /// <summary>The person who works by the card; the first of whom it is for where nobody is named.</summary>
    public int? WorkedBy { get; init; }

    public OutcomeKind Ended { get; private set; }

    /// <summary>What it failed of or stopped with, numbers as the card's calculations; empty when done.</summary>
    public string Mechanism { get; private set; } = "";

    /// <summary>Step under way, or the last.</summary>
    public int Step { get; private set; }

    /// <summary>When what the card is for was noticed.</summary>
    public SimTime BeganAt { get; private set; }

    public SimTime EndedAt { get; private set; }

    /// <summary>The program chosen, once the card has begun.</summary>
    public CardProgram? Program => _program;

    /// <summary>The outcome as numbers; the hash is the world's.</summary>
    public Outcome Outcome => new(
        _world.Trouble is null || Ended != OutcomeKind.Running ? Ended : OutcomeKind.Undecided, Mechanism.Length > 0 ? Mechanism : _world.Trouble ?? "", Step, EndedAt, _world.Hash);

    internal void Attach(World world)
    {
        Clear();
        _world = world;
        Prepare();
        CardProgram any = _choices[0].Program;
        _holder = FindHolder() ?? throw new ArgumentException($"Nobody is there who may work by '{any.Title}'.", nameof(world));
        world.Agenda.Add(new(world.Now, AgendaKind.Person, _holder.Id));
        world.Agenda.Add(new(world.Now + SimTime.FromSeconds(world.HumanTimes.LongestRun), AgendaKind.Deadline, 1));
        (_at.Actor, _at.Active) = (_holder.Id, true);
    }

    /// <summary>Makes once what every run of this card on this plan needs.</summary>
    private void Prepare()
    {
        if (!_prepared)
        {
            _margins.Prepare(_world.Plan, _choices, _written);
            _looks = [.. _choices.Select(c => new ProgramLooks(c.Program, _world.MayInjure))];
            _prepared = true;
        }
    }

    /// <summary>Whether the machine must be in view for what comes when a person has finished what they were at.</summary>
    internal bool Looks(Person person) =>
        Ended == OutcomeKind.Running && (ErrandOf(person) is not null || LooksForItself(person));

    private bool LooksForItself(Person person) => StrandOf(person) is { } strand && (_program is null || _looks[_choice].Needed(strand.Next, strand.Halfway));

    /// <summary>A person has finished what they were at.</summary>
    internal void Resume(Person person)
    {
        if (Ended != OutcomeKind.Running)
        {
            return;
        }

        if (ErrandOf(person) is { } errand)
        {
            GoOn(errand, person);
            return;
        }

        if (StrandOf(person) is not { } strand)
        {
            return;
        }

        _at = strand;
        if (_program is null)
        {
            if (!Choose())
            {
                return;
            }
        }
        else if (_at.Halfway)
        {
            _at.Halfway = false;
            Complete(_program.Ops[_at.Next]);
        }

        Proceed();
    }

    /// <summary>A sentinel has come true.</summary>
    internal void Tell(int owner)
    {
        if (Ended != OutcomeKind.Running)
        {
            return;
        }

        if (owner >= Sentinel.MustNever)
        {
            End(OutcomeKind.Failed, _program!.MustNever[owner - Sentinel.MustNever].Name);
        }
        else if (owner == Sentinel.Stay)
        {
            End(OutcomeKind.Failed, MechanismWords.DidNotStay);
        }
        else
        {
            Strand waiting = _strands[owner - Sentinel.Wait];
            _world.StopWatching(owner);
            _world.Agenda.Remove(AgendaKind.Deadline, waiting.Wait);
            SimTime reacts = SimTime.FromSeconds(_world.People[waiting.Actor].Role.ReactionSeconds);
            _world.Agenda.Add(new(_world.Now + reacts, AgendaKind.Person, waiting.Actor));
        }
    }

    /// <summary>A wait, or the time for which the result must stay so, is over.</summary>
    internal void TimeIsUp(AgendaKind kind, int id)
    {
        if (Ended != OutcomeKind.Running)
        {
            return;
        }

        if (kind == AgendaKind.Stay)
        {
            End(OutcomeKind.Done, "");
        }
        else if (id == NeverUsed)
        {
            End(OutcomeKind.NotApplicable, "");
        }
        else if (id == 1)
        {
            End(OutcomeKind.Undecided, MechanismWords.NoEnd);
        }
        else
        {
            _at = _strands[id - Sentinel.Wait];
            _world.StopWatching(_at.Wait);
            _at.Halfway = false;
            GiveUp(_program!.Ops[_at.Next]);
            Proceed();
        }
    }

    /// <summary>Takes the program whose sign is seen. Until the card is to be used, waits for that.</summary>
    private bool Choose()
    {
        if (_choices[0].Program.UseWhen is { } any && _world.Watch(_at.Wait, Margin(any)) < 0)
        {
            if (!_noticing)
            {
                _noticing = true;
                _world.Agenda.Add(new(_world.Now + SimTime.FromSeconds(_world.HumanTimes.NoticeWindow), AgendaKind.Deadline, NeverUsed));
            }

            return false;
        }

        _world.StopWatching(_at.Wait);
        _world.Agenda.Remove(AgendaKind.Deadline, NeverUsed);
        for (int i = 0; i < _choices.Length && _program is null; i++)
        {
            if (_choices[i].When is not { } when || Holds(when))
            {
                (_choice, _program) = (i, _choices[i].Program);
            }
        }

        if (_program is null)
        {
            End(OutcomeKind.NotApplicable, "");
            return false;
        }

        BeganAt = _world.Now;
        for (int i = 0; i < _program.MustNever.Length; i++)
        {
            Signal margin = _margins.Of(_world.Plan, _program.MustNever[i], _written);
            if (_program.MustNever[i] is not FactCondition.Number && _world.Watch(Sentinel.MustNever + i, margin) >= 0)
            {
                End(OutcomeKind.Failed, _margins.Say(MechanismWords.Already, _program.MustNever[i].Name));
                return false;
            }
        }

        foreach (string need in _program.Needs)
        {
            if (_world.Lacking(need) is { } kept)
            {
                End(OutcomeKind.Stopped, _margins.Say(MechanismWords.Lacks, need, kept.Name));
                return false;
            }
        }

        _world.MeetHazards();
        return Ended == OutcomeKind.Running;
    }

    /// <summary>A hazard has bitten somebody: what the card brought about is not safe, whatever else it does.</summary>
    internal void Harm(string mechanism)
    {
        if (Ended == OutcomeKind.Running && _program is not null)
        {
            End(OutcomeKind.Failed, mechanism);
        }
    }

    /// <summary>What a person is at, or null for somebody who has no part in it now.</summary>
    private Strand? StrandOf(Person person)
    {
        foreach (Strand strand in _strands)
        {
            if (strand.Active && strand.Actor == person.Id)
            {
                return strand;
            }
        }

        return null;
    }

    private bool Holds(Condition condition) => _world.Value(Margin(condition)) >= 0;

    private Signal Margin(Condition condition) => Margin(condition, _at);

    private Signal Margin(Condition condition, Strand strand) => _margins.Of(_world.Plan, condition, _world.People[strand.Actor].Place, _written);

    private Person? FindHolder() => WorkedBy is { } id ? _world.People[id] : FindPerson(_choices[0].Program.For is [var first, ..] ? first : null);

    private Person? FindPerson(Role? role)
    {
        for (int i = 0; i < _world.People.Count; i++)
        {
            if (role is null || _world.People[i].Role.Name == role.Name)
            {
                return _world.People[i];
            }
        }

        return null;
    }

    /// <summary>Makes the run a new one.</summary>
    private void Clear()
    {
        Array.Fill(_written, double.NaN); // what was never read is no number
        Array.Clear(_counters);
        foreach (Strand strand in _strands)
        {
            strand.Clear();
        }

        foreach (Errand errand in _errands)
        {
            errand.Clear();
        }

        _at = _strands[0];
        (_program, _judging, _noticing) = (null, false, false);
        (_roundBegan, BeganAt, EndedAt) = (SimTime.Zero, SimTime.Zero, SimTime.Zero);
        (Ended, Mechanism, Step) = (OutcomeKind.Running, "", 0);
        _story = null;
    }

    /// <param name="kind">How it ends.</param>
    /// <param name="mechanism">Of what, in the same words in every run.</param>
    /// <param name="said">What is said of it, with this run's numbers; null for nothing else.</param>
    private void End(OutcomeKind kind, string mechanism, TextTemplate? said = null)
    {
        Ended = kind;
        Mechanism = mechanism;
        EndedAt = _world.Now;
        _world.StopWatching(Sentinel.Stay);
        foreach (Strand strand in _strands)
        {
            if (strand.Active)
            {
                _world.StopWatching(strand.Wait);
                _world.Agenda.Remove(AgendaKind.Deadline, strand.Wait);
                _world.Agenda.Remove(AgendaKind.Person, strand.Actor);
            }
        }

        foreach (Errand errand in _errands)
        {
            _world.Agenda.Remove(AgendaKind.Errand, errand.Number);
        }

        _world.Agenda.Remove(AgendaKind.Deadline, 1);
        _world.Agenda.Remove(AgendaKind.Deadline, NeverUsed);
        _world.Agenda.Remove(AgendaKind.Stay, 0);
        _world.Overseer?.Declared(_holder);
        if (RestAtEnd)
        {
            _world.Limit = _world.Now;
        }

        if (_world.Journal is not null)
        {
            _world.Note(JournalKind.End, EndOf(kind, new(said?.Say(_written) ?? mechanism)), Step);
        }
    }

    private static FormattableString EndOf(OutcomeKind kind, MechanismWords why) => kind switch
    {
        OutcomeKind.Done => $"The card ended well.",
        OutcomeKind.Stopped => $"The card ended safely, not done: {why}",
        OutcomeKind.NotApplicable => $"The card is not to be used here.",
        OutcomeKind.Undecided => $"Undecided: {why}.",
        _ => $"The card failed: {why}.",
    };
}
