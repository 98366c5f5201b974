using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Takes signals down on one tape: what several of them are made of stands there once.</summary>
/// <param name="named">The plan's signals by the numbers that names of formulas carry.</param>
public sealed class SignalNotes(IReadOnlyList<Signal> named)
{
    private readonly TapeWriter _writer = new();
    private readonly Dictionary<Signal, Noted> _known = new(ReferenceEqualityComparer.Instance);
    private readonly List<(Signal Signal, int Step)> _leaves = [];
    private readonly SortedDictionary<int, Noted> _slots = [];

    /// <summary>Signals that are evaluated as they are, and the steps of the tape that hold what they come to.</summary>
    public IReadOnlyList<(Signal Signal, int Step)> Leaves => _leaves;

    /// <summary>Slots by their indices, and the steps of the tape that hold them.</summary>
    public IEnumerable<(Slot Slot, int Step)> Slots => _slots.Select(s => (new Slot(s.Key), _writer.StepOf(s.Value)));

    public Noted Of(Signal signal)
    {
        ArgumentNullException.ThrowIfNull(signal);
        if (!_known.TryGetValue(signal, out Noted noted))
        {
            noted = signal.Note(this);
            _known.Add(signal, noted);
        }

        return noted;
    }

    /// <summary>The signal of a name in a formula.</summary>
    public Noted Named(int id) => Of(named[id]);

    /// <summary>A signal that is evaluated as it is.</summary>
    public Noted Leaf(Signal signal)
    {
        Noted leaf = _writer.Leaf();
        _leaves.Add((signal, _writer.StepOf(leaf)));
        return leaf;
    }

    public Noted Slot(Slot slot)
    {
        if (!_slots.TryGetValue(slot.Index, out Noted noted))
        {
            noted = _writer.Leaf();
            _slots.Add(slot.Index, noted);
        }

        return noted;
    }

    public int StepOf(Noted noted) => _writer.StepOf(noted);

    public Tape ToTape() => _writer.ToTape();
}
