using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The negative of a margin.</summary>
public sealed class NotSignal(Signal inner) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => -inner.Evaluate(bank);

    public override Noted Note(SignalNotes notes) => -notes.Of(inner);

    public override void TellReads(SignalReads reads) => reads.Add(inner);
}
