using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>slot·factor + offset.</summary>
public sealed class SlotSignal(Slot slot, double factor = 1, double offset = 0) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Fma(bank.SlotLanes(slot), Lanes.Of(factor), Lanes.Of(offset));

    public override Noted Note(SignalNotes notes) => Noted.Fma(notes.Slot(slot), Noted.Of(factor), Noted.Of(offset));

    public override void TellReads(SignalReads reads) => reads.Add(slot);
}
