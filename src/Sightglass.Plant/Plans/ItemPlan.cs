using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>What the plan knows of one item: its position, what it shows, its faults.</summary>
public sealed record ItemPlan(Item Item)
{
    /// <summary>Index into the item's positions, or null for what is not operated.</summary>
    public Slot? Position { get; init; }

    /// <summary>What it shows before bias, range and rounding; null for what shows nothing.</summary>
    public Signal? Shown { get; init; }

    /// <summary>Margin of being lit; null for what is no lamp.</summary>
    public Signal? Lit { get; init; }

    /// <summary>SI added to what it shows; null where it cannot be biased.</summary>
    public Slot? Bias { get; init; }

    /// <summary>1 while the instrument is stuck.</summary>
    public Slot? Stuck { get; init; }

    /// <summary>What it shows while stuck.</summary>
    public Slot? Held { get; init; }

    /// <summary>1 while it cannot be moved from its position.</summary>
    public Slot? Jammed { get; init; }

    /// <summary>What must hold for it to be moved by hand; null where nothing bears on it.</summary>
    public Hold? Free { get; init; }

    /// <summary>Fault → its values' slots by name; the fault is there when its first slot is not zero.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<FaultValue>> Faults { get; init; } =
        ImmutableSortedDictionary<string, ImmutableArray<FaultValue>>.Empty;
}
