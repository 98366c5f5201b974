using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.People;

/// <summary>Somebody in the world: a role, a place, and hands for one action at a time.</summary>
public sealed class Person
{
    internal Person(int id, Role role, int place, WayTable ways) => Take(id, role, place, ways);

    public int Id { get; private set; }

    public Role Role { get; private set; } = null!;

    /// <summary>Number of the place in the plan's way table; −1 while walking.</summary>
    public int Place { get; set; }

    /// <summary>Where a walk ends; −1 while standing.</summary>
    public int WalkingTo { get; set; } = -1;

    /// <summary>Where they want to go, of somebody whose walk ends before something that is shut, which they do not know yet; −1: nowhere beyond.</summary>
    internal int Onward { get; set; } = -1;

    /// <summary>Where a walk began; what it was of somebody who stands.</summary>
    internal int Left { get; set; }

    /// <summary>Number of the place to which they found no way; −1: none since they last set out.</summary>
    public int Missed { get; internal set; } = -1;

    /// <summary>The ways that they know: all of the book's, without those that they found shut.</summary>
    public WayTable Ways { get; internal set; } = null!;

    /// <summary>Number of the place to which they are on the way, as far as they know; −1 while standing.</summary>
    public int Towards => Onward >= 0 ? Onward : WalkingTo;

    /// <summary>Number of the place whose dangers one meets: where one stands, or on the way the place that one has not left yet or is passing; −1 between those.</summary>
    internal int Within { get; set; }

    /// <summary>Number of the next place on the way where something injures, or may; −1: none, or not known yet.</summary>
    internal int Ahead { get; set; } = -1;

    /// <summary>Metres walked, at 1.3 m/s of ordinary way.</summary>
    public double Walked { get; set; }

    /// <summary>Protections held, a bit each in the order of the book's names.</summary>
    public ulong Protections { get; set; }

    /// <summary>Number of the hazard that the person was told of last, so that it is told once; −1: none.</summary>
    internal int Heeded { get; set; } = -1;

    /// <summary>What they are at because somebody outside said so; null: nothing.</summary>
    public WorldAction? Deed { get; internal set; }

    /// <summary>Whether who is asked answers.</summary>
    internal bool IsHeard { get; set; }

    /// <summary>Controls the person was given permission for, by item name.</summary>
    public HashSet<string> Permissions { get; } = new(8, StringComparer.Ordinal);

    /// <summary>Becomes somebody else, in another case: nothing is allocated for it.</summary>
    [System.Diagnostics.CodeAnalysis.MemberNotNull(nameof(Role))]
    internal void Take(int id, Role role, int place, WayTable ways)
    {
        (Id, Role, Place, WalkingTo, Walked, Protections, Heeded) = (id, role, place, -1, 0, 0, -1);
        (Within, Ahead, Deed, IsHeard) = (place, -1, null, false);
        (Onward, Left, Missed, Ways) = (-1, place, -1, ways);
        Permissions.Clear();
    }
}
