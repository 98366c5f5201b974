using System.Collections.Immutable;

namespace Sightglass.Plant.Plans;

/// <summary>
/// A part of the plant that holds nothing and so is solved, not stepped: wires, alternating current, springs. From slots, and signals that see slots only, it works out other slots, at events;
/// what it must remember (a coil that is up) is one of the slots that it sets. Immutable; each world has a room of its own in which it is worked out.
/// </summary>
/// <param name="name">For messages.</param>
public abstract class Resolver(string name)
{
    public string Name { get; } = name;

    /// <summary>The slots that it sets; nobody else does.</summary>
    public abstract ImmutableArray<Slot> Sets { get; }

    public abstract ResolverRoom NewRoom();

    /// <summary>What is told when a slot that it sets comes to a value; null where nobody need know.</summary>
    /// <param name="index">Among <see cref="Sets"/>.</param>
    /// <param name="value">What it comes to.</param>
    public virtual FormattableString? Telling(int index, double value) => null;
}
