using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.World.Hazards;
using Sightglass.World.Journal;
using Sightglass.World.People;
using Sightglass.World.Runs;

namespace Sightglass.World;

/// <summary>Dangers that people meet, and what protects them.</summary>
public sealed partial class World
{
    private readonly HazardTable _hazards;
    private readonly ImmutableArray<Protection> _protections;
    private readonly List<Guard> _guards = [];

    /// <summary>Locks, chocks and signals that stand.</summary>
    public IReadOnlyList<Guard> Guards => _guards;

    /// <summary>Whether somebody is safe from what a protection is for.</summary>
    public bool IsProtected(Person person, Protection protection)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(protection);
        if (protection.Sort == ProtectionSort.Asked)
        {
            return (person.Protections & Bit(protection)) != 0;
        }

        bool any = false;
        bool all = true;
        foreach (string target in protection.Targets)
        {
            bool stands = Stands(protection, target, protection.Sort == ProtectionSort.Locks ? person.Id : null);
            (any, all) = (any || stands, all && stands);
        }

        return protection.Sort == ProtectionSort.Chocks ? any : all;
    }

    public bool IsLocked(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        foreach (Guard guard in _guards)
        {
            if (guard.Sort == ProtectionSort.Locks && guard.Target == item.Name)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether touching an item injures, or not, as the machine stands.</summary>
    internal bool MayInjure(Item item)
    {
        foreach (HazardEntry hazard in _hazards.On(item))
        {
            if (hazard is { IsCritical: true, Margin: not null })
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether touching an item would injure somebody as things stand. Only with a state in view.</summary>
    internal bool WouldInjure(Person person, Item item)
    {
        foreach (HazardEntry hazard in _hazards.On(item))
        {
            if (hazard.IsCritical && !IsSafe(person, hazard) && Bites(hazard))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether being at a place would injure somebody as things stand. Only with a state in view.</summary>
    internal bool IsDangerous(Person person, int place)
    {
        foreach (HazardEntry hazard in _hazards.At(place))
        {
            if (hazard.IsCritical && !IsSafe(person, hazard) && Bites(hazard))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether somebody is about to come where a hazard injures, or not, as the machine stands.</summary>
    private bool ComesToWatch(Person person, int place)
    {
        foreach (HazardEntry hazard in _hazards.At(place))
        {
            if (hazard is { IsCritical: true, Margin: not null } && !IsSafe(person, hazard))
            {
                return true;
            }
        }

        return false;
    }

    internal void Grant(Person person, Protection protection) => person.Protections |= Bit(protection);

    /// <summary>Whoever is still where the protection is needed is in danger from now on.</summary>
    internal void GiveBack(Person person, Protection protection)
    {
        person.Protections &= ~Bit(protection);
        MeetHazards(person);
    }

    internal void Protect(Person person, Protection protection, string target)
    {
        if (!Stands(protection, target, person.Id))
        {
            _guards.Add(new(protection.Sort, protection.Name, target, person.Id));
        }
    }

    /// <summary>Takes away what was set.</summary>
    /// <returns>False when it was set by others: a lock by another person, a signal or a chock by another group.</returns>
    internal bool Unprotect(Person person, Protection protection, string target)
    {
        bool others = false;
        for (int i = _guards.Count - 1; i >= 0; i--)
        {
            Guard guard = _guards[i];
            if (!guard.IsAt(protection, target))
            {
                continue;
            }

            bool own = guard.Sort == ProtectionSort.Locks ? guard.Owner == person.Id : _people[guard.Owner].Role.Name == person.Role.Name;
            others |= !own;
            if (own || guard.Sort != ProtectionSort.Locks)
            {
                _guards.RemoveAt(i);
            }
        }

        MeetHazards();
        return !others;
    }

    /// <summary>A protection that was asked for and that somebody still holds, or null.</summary>
    internal Protection? NotGivenBack()
    {
        foreach (Person person in _people)
        {
            foreach (Protection protection in _protections)
            {
                if ((person.Protections & Bit(protection)) != 0)
                {
                    return protection;
                }
            }
        }

        return null;
    }

    /// <summary>Looks at what people meet where they are, and goes on watching it. Only with a state in view.</summary>
    internal void MeetHazards()
    {
        foreach (Person person in _people)
        {
            MeetHazards(person);
        }
    }

    /// <summary>Somebody puts a hand to an item.</summary>
    internal void Touch(Person person, Item item)
    {
        Overseer?.Touched(person, item);
        foreach (HazardEntry hazard in _hazards.On(item))
        {
            if (hazard.IsCritical && Bites(hazard) && !IsSafe(person, hazard))
            {
                Bite(person, hazard);
            }
        }
    }

    private void MeetHazards(Person person)
    {
        LeaveHazards(person);
        foreach (HazardEntry hazard in _hazards.At(person.Within))
        {
            if (!hazard.IsCritical || IsSafe(person, hazard))
            {
                continue;
            }

            if (hazard.Margin is null || Watch(OwnerOf(person, hazard), hazard.Margin) >= 0)
            {
                Bite(person, hazard);
            }
        }
    }

    /// <summary>Who walks away meets them no more.</summary>
    private void LeaveHazards(Person person)
    {
        int first = Sentinel.Hazard + (person.Id * Sentinel.HazardsAPerson);
        for (int i = _sentinels.Count - 1; i >= 0; i--)
        {
            if (_sentinels[i].Owner >= first && _sentinels[i].Owner < first + Sentinel.HazardsAPerson)
            {
                _idle.Push(_sentinels[i]);
                _sentinels.RemoveAt(i);
            }
        }
    }

    /// <summary>A hazard that somebody stood in has begun to bite.</summary>
    private void TellHazard(int owner)
    {
        int number = owner - Sentinel.Hazard;
        Person person = _people[number / Sentinel.HazardsAPerson];
        HazardEntry hazard = _hazards.All[number % Sentinel.HazardsAPerson];
        if (!IsSafe(person, hazard))
        {
            Bite(person, hazard);
        }
    }

    private bool Bites(HazardEntry hazard) => hazard.Margin is null || Value(hazard.Margin) >= 0;

    private bool IsSafe(Person person, HazardEntry hazard) => hazard.Protection is { } protection && IsProtected(person, protection);

    private bool Stands(Protection protection, string target, int? owner)
    {
        foreach (Guard guard in _guards)
        {
            if (guard.IsAt(protection, target) && (owner is null || guard.Owner == owner))
            {
                return true;
            }
        }

        return false;
    }

    private void Bite(Person person, HazardEntry hazard)
    {
        if (Journal is not null)
        {
            Note(JournalKind.Hazard, $"A hazard bites the {person.Role.Name}: {new MechanismWords(hazard.Mechanism)}. {hazard.Hazard.Caution.Text}");
        }

        Run?.Harm(hazard.Mechanism);
        Overseer?.Injured(person, hazard.Mechanism);
    }

    /// <summary>What is only to be heeded is told once, where a journal is kept and when the machine is in view anyway.</summary>
    private void Heed(Person person)
    {
        if (Journal is null || _blind)
        {
            return;
        }

        foreach (HazardEntry hazard in _hazards.At(person.Place))
        {
            if (hazard is { IsCritical: false, Margin: not null } && person.Heeded != hazard.Number && Bites(hazard))
            {
                person.Heeded = hazard.Number;
                Note(JournalKind.Hazard, $"A hazard for the {person.Role.Name}: {hazard.Hazard.Name}. {hazard.Hazard.Caution.Text}");
            }
        }
    }

    private ulong Bit(Protection protection)
    {
        for (int i = 0; i < _protections.Length; i++)
        {
            if (_protections[i].Name == protection.Name)
            {
                return 1UL << i;
            }
        }

        return 0;
    }

    private static int OwnerOf(Person person, HazardEntry hazard) => Sentinel.Hazard + (person.Id * Sentinel.HazardsAPerson) + hazard.Number;
}
