using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>(signal − threshold)·sign: a condition that holds at or above (sign 1), or at or below (sign −1), a threshold.</summary>
public sealed class MarginSignal(Signal signal, double threshold, double sign) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => (signal.Evaluate(bank) - Lanes.Of(threshold)) * Lanes.Of(sign);

    public override void TellReads(SignalReads reads) => reads.Add(signal);
}
