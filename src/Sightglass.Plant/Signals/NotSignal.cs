using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The negative of a margin.</summary>
public sealed class NotSignal(Signal inner) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => -inner.Evaluate(bank);

    public override void TellReads(SignalReads reads) => reads.Add(inner);
}
