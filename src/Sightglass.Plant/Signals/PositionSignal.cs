using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Margin of 'stands in this position': a quarter less the distance from its number.</summary>
public sealed class PositionSignal(Slot slot, int position) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Of(0.25) - Lanes.Abs(bank.SlotLanes(slot) - Lanes.Of(position));

    public override Noted Note(SignalNotes notes) => Noted.Of(0.25) - Noted.Abs(notes.Slot(slot) - Noted.Of(position));

    public override void TellReads(SignalReads reads) => reads.Add(slot);
}
