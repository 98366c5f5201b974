using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A number for each position of a control.</summary>
/// <param name="position">The slot of the control's position, from 0.</param>
/// <param name="values">SI, one for each position.</param>
public sealed class TableSignal(Slot position, ImmutableArray<double> values) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Lookup(values.AsSpan(), bank.SlotLanes(position));

    public override Noted Note(SignalNotes notes) => Noted.Lookup(values.AsSpan(), notes.Slot(position));

    public override void TellReads(SignalReads reads) => reads.Add(position);
}
