using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>What signals come from in the end: the networks whose state they see, and the slots.</summary>
/// <param name="named">The plan's signals by the numbers that names of formulas carry.</param>
public sealed class SignalReads(IReadOnlyList<Signal> named)
{
    private readonly HashSet<Signal> _told = new(ReferenceEqualityComparer.Instance);

    public SortedSet<int> Networks { get; } = [];

    /// <summary>By their indices.</summary>
    public SortedSet<int> Slots { get; } = [];

    public void Add(Signal signal)
    {
        ArgumentNullException.ThrowIfNull(signal);
        if (_told.Add(signal))
        {
            signal.TellReads(this);
        }
    }

    public void Add(Slot slot) => Slots.Add(slot.Index);

    public void AddNetwork(int network) => Networks.Add(network);

    /// <summary>The signal of a name in a formula.</summary>
    public void AddNamed(int id) => Add(named[id]);
}
