using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A number that follows from the state of a bank: eight lanes at once, SI; a condition is a margin, true when ≥ 0.</summary>
public abstract class Signal
{
    public abstract Lanes Evaluate(LaneBank bank);

    /// <summary>Takes it down on a tape, with the same bits; a signal that says no more stands there as a whole.</summary>
    public virtual Noted Note(SignalNotes notes) => notes.Leaf(this);

    /// <summary>Says what it comes from: networks, slots, other signals.</summary>
    public abstract void TellReads(SignalReads reads);
}
