using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>One signal over another that is never zero.</summary>
public sealed class QuotientSignal(Signal first, Signal second) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => first.Evaluate(bank) / second.Evaluate(bank);

    public override Noted Note(SignalNotes notes) => notes.Of(first) / notes.Of(second);

    public override void TellReads(SignalReads reads)
    {
        reads.Add(first);
        reads.Add(second);
    }
}
