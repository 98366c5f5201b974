using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Margin of 'has moved by a band from what was told last'.</summary>
/// <param name="source">What it is now.</param>
/// <param name="told">What was told last.</param>
/// <param name="band">Greater than zero, in the source's unit.</param>
public sealed class BandSignal(Signal source, Slot told, double band) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Abs(source.Evaluate(bank) - bank.SlotLanes(told)) - Lanes.Of(band);

    public override Noted Note(SignalNotes notes) => Noted.Abs(notes.Of(source) - notes.Slot(told)) - Noted.Of(band);

    public override void TellReads(SignalReads reads)
    {
        reads.Add(source);
        reads.Add(told);
    }
}
