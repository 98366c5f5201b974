using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
using Sightglass.Plant.Plans;
using Sightglass.World.Agenda;
using Sightglass.World.Journal;
using Sightglass.World.People;

namespace Sightglass.World;

/// <summary>
/// What people do because somebody outside says so: a trainee at a page. Their hands are for one thing at a time and it takes as long as the book says. What they may not do they can
/// do all the same; it is noted.
/// </summary>
public sealed partial class World
{
    /// <summary>Why a person cannot begin something now; <see cref="Hindrance.None"/> where they can, allowed or not.</summary>
    public Hindrance HindranceOf(WorldAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        if (PersonOf(action) is not { } id)
        {
            return Hindrance.None;
        }

        if (id < 0 || id >= _people.Count)
        {
            return Hindrance.Nobody;
        }

        Person person = _people[id];
        return action switch
        {
            WorldAction.Declare or WorldAction.TakeHint or WorldAction.Stop or WorldAction.TakeOver or WorldAction.HandBack => Hindrance.None,
            _ when person.WalkingTo >= 0 || person.Deed is not null => Hindrance.Busy,
            WorldAction.Walk w => WayTo(person, w.Place),
            WorldAction.Operate o => Plan.Items.TryGetValue(o.Item, out ItemPlan? item) && item.Position is not null && item.Item.Positions.Contains(o.Position)
                ? Within(person, item.Item.Places.AsSpan().Contains(PlaceOf(person) ?? ""))
                : Hindrance.Impossible,
            WorldAction.Ask a => OwnerOf(a.For) is null ? Hindrance.Impossible : Hindrance.None,
            WorldAction.GiveBack g => ProtectionOf(g.Protection) is { } held && (person.Protections & Bit(held)) != 0 ? Hindrance.None : Hindrance.Impossible,
            WorldAction.SetGuard s => AtGuard(person, s.Protection, s.Target) is not Hindrance.None and var far ? far : LackingFor(ProtectionOf(s.Protection)!) is null ? Hindrance.None : Hindrance.Lacks,
            WorldAction.TakeGuard t => AtGuard(person, t.Protection, t.Target),
            WorldAction.Report => Hindrance.None,
            WorldAction.Tell t => Plan.Book.Roles.ContainsKey(t.Role) ? Hindrance.None : Hindrance.Impossible,
            _ => Hindrance.Impossible,
        };
    }

    /// <summary>What somebody would do wrong by operating a control, as things stand.</summary>
    public static Breach BreachOf(Person person, Item item)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(item);
        return item.Authority is not { } authority ? Breach.None
            : !authority.Who.IsEmpty && !authority.Who.AsSpan().Contains(person.Role.Name) ? Breach.MayNot
            : authority.Permission is { } owner && owner != person.Role.Name && !person.Permissions.Contains(item.Name) ? Breach.NotPermitted
            : Breach.None;
    }

    /// <summary>The place where somebody stands; null on the way.</summary>
    public string? PlaceOf(Person person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return person.Place < 0 ? null : Plan.Ways.Places[person.Place].Name;
    }

    /// <summary>The number of the person who does an action, or null for what no person does.</summary>
    public static int? PersonOf(WorldAction action) => action switch
    {
        WorldAction.Operate { Person: >= 0 } o => o.Person,
        WorldAction.Walk w => w.Person,
        WorldAction.Ask a => a.Person,
        WorldAction.GiveBack g => g.Person,
        WorldAction.SetGuard s => s.Person,
        WorldAction.TakeGuard t => t.Person,
        WorldAction.Tell t => t.Person,
        WorldAction.Report r => r.Person,
        WorldAction.Declare d => d.Person,
        WorldAction.TakeHint h => h.Person,
        WorldAction.Stop s => s.Person,
        WorldAction.TakeOver t => t.Person,
        WorldAction.HandBack h => h.Person,
        _ => null,
    };

    /// <summary>Begins what a person does.</summary>
    private void Begin(WorldAction action, int id)
    {
        if (HindranceOf(action) != Hindrance.None)
        {
            return; // between the asking and now their hands were filled: nothing happens
        }

        Person person = _people[id];
        switch (action)
        {
            case WorldAction.Walk w:
                if (Journal is not null)
                {
                    Note(JournalKind.Deed, $"{person.Role.Name} goes to {w.Place}.");
                }

                StartWalk(person, Plan.Ways.IndexOf(w.Place));
                return;
            case WorldAction.Declare:
                Overseer?.Declared(person);
                return;
            case WorldAction.TakeHint:
                Overseer?.Hinted(person);
                return;
            case WorldAction.Stop:
                Note(JournalKind.Said, $"{person.Role.Name} calls to stop.");
                Overseer?.Stopped(person);
                return;
            case WorldAction.TakeOver:
                Overseer?.TakenOver(person, true);
                return;
            case WorldAction.HandBack:
                Overseer?.TakenOver(person, false);
                return;
            case WorldAction.Operate o:
                Item item = Plan.Book.Items[o.Item];
                Breaches(person, BreachOf(person, item), item.Name);
                Touch(person, item);
                Occupy(person, action, item.OperateSeconds);
                return;
            case WorldAction.Ask:
                double answer = DrawAnswer();
                person.IsHeard = double.IsFinite(answer);
                Occupy(person, action, HumanTimes.Tell + (person.IsHeard ? answer : HumanTimes.WaitsForAnswer));
                return;
            case WorldAction.SetGuard s:
                Occupy(person, action, SecondsOf(ProtectionOf(s.Protection)!));
                return;
            case WorldAction.TakeGuard t:
                Occupy(person, action, SecondsOf(ProtectionOf(t.Protection)!));
                return;
            default:
                Occupy(person, action, HumanTimes.Tell);
                return;
        }
    }

    /// <summary>What a person was at is done.</summary>
    private void Complete(Person person, WorldAction action)
    {
        string role = person.Role.Name;
        switch (action)
        {
            case WorldAction.Operate o:
                Item item = Plan.Book.Items[o.Item];
                bool moved = Turn(item, o.Position);
                if (Journal is not null)
                {
                    PositionWord to = new(o.Item, o.Position);
                    Note(JournalKind.Deed, moved ? (FormattableString)$"{role} puts {o.Item} to {to}." : $"{role} puts {o.Item} to {to}, but it does not move.");
                }

                break;
            case WorldAction.Ask a:
                Answered(person, a);
                break;
            case WorldAction.GiveBack g:
                Note(JournalKind.Said, $"{role} gives back {g.Protection}.");
                GiveBack(person, ProtectionOf(g.Protection)!);
                break;
            case WorldAction.SetGuard s:
                Note(JournalKind.Deed, $"{role} sets {s.Protection} at {s.Target}.");
                Protect(person, ProtectionOf(s.Protection)!, s.Target);
                break;
            case WorldAction.TakeGuard t:
                Note(JournalKind.Deed, $"{role} takes {t.Protection} away from {t.Target}.");
                if (!Unprotect(person, ProtectionOf(t.Protection)!, t.Target))
                {
                    Breaches(person, Breach.RemovedByAnother, t.Protection);
                }

                break;
            case WorldAction.Tell t:
                Note(JournalKind.Said, $"{role} tells the {t.Role}: {t.Text}");
                Overseer?.Told(person, t.Role, t.Text);
                break;
            case WorldAction.Report r:
                Note(JournalKind.Said, $"{role} reports: {r.Finding}");
                Overseer?.Reported(person, r.Finding);
                break;
        }
    }

    private void Answered(Person person, WorldAction.Ask ask)
    {
        (string role, string owner) = (person.Role.Name, OwnerOf(ask.For)!);
        if (!person.IsHeard)
        {
            Note(JournalKind.Said, $"{role} asks the {owner} for {ask.For}. Nobody answers.");
            return;
        }

        Note(JournalKind.Said, $"{role} asks the {owner} for {ask.For}. It is granted.");
        if (ProtectionOf(ask.For) is { } protection)
        {
            Grant(person, protection);
        }
        else
        {
            person.Permissions.Add(ask.For);
        }

        Overseer?.Told(person, owner, ask.For);
    }

    private void Breaches(Person person, Breach breach, string what)
    {
        if (breach == Breach.None)
        {
            return;
        }

        string role = person.Role.Name;
        switch (breach)
        {
            case Breach.MayNot:
                Note(JournalKind.Finding, $"{role} may not operate {what}, and does.");
                break;
            case Breach.NotPermitted:
                Note(JournalKind.Finding, $"{role} has no permission to operate {what}, and does.");
                break;
            case Breach.RemovedByAnother:
                Note(JournalKind.Finding, $"{role} takes away {what}, which others have set.");
                break;
        }

        Overseer?.Breached(person, breach, what);
    }

    private void Occupy(Person person, WorldAction action, double seconds)
    {
        person.Deed = action;
        Agenda.Add(new(Now + SimTime.FromSeconds(seconds), AgendaKind.Person, person.Id));
    }

    private Hindrance WayTo(Person person, string place) => !Plan.Book.Places.ContainsKey(place)
        ? Hindrance.Impossible
        : (person.Role.IsBound && !person.Role.Reaches.AsSpan().Contains(place)) || double.IsInfinity(KnownWays(person).Seconds(person.Place, Plan.Ways.IndexOf(place))) ? Hindrance.NoWay : Hindrance.None;

    private Hindrance AtGuard(Person person, string name, string target)
    {
        string? here = PlaceOf(person);
        return ProtectionOf(name) is not { Sort: not ProtectionSort.Asked } protection || !protection.Targets.Contains(target)
            ? Hindrance.Impossible
            : Within(person, protection.Sort == ProtectionSort.SetAt ? target == here : Plan.Book.Items[target].Places.AsSpan().Contains(here ?? ""));
    }

    private static Hindrance Within(Person person, bool reached) => person.Place >= 0 && reached ? Hindrance.None : Hindrance.OutOfReach;

    private double SecondsOf(Protection protection) => protection.Sort switch
    {
        ProtectionSort.Locks => HumanTimes.Lock,
        ProtectionSort.Chocks => HumanTimes.Chock,
        _ => HumanTimes.SetSignal,
    };

    private Protection? ProtectionOf(string name) => Plan.Book.Protections.GetValueOrDefault(name);

    /// <summary>Who is asked for a protection or for the permission to operate a control; null where nobody is.</summary>
    private string? OwnerOf(string what) =>
        ProtectionOf(what) is { Sort: ProtectionSort.Asked } protection ? protection.AskedOf : Plan.Book.Items.GetValueOrDefault(what)?.Authority?.Permission;
}
