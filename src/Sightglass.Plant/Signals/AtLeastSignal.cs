using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Margin of 'is at least so much'.</summary>
public sealed class AtLeastSignal(Signal signal, double least) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => signal.Evaluate(bank) - Lanes.Of(least);

    public override Noted Note(SignalNotes notes) => notes.Of(signal) - Noted.Of(least);

    public override void TellReads(SignalReads reads) => reads.Add(signal);
}
