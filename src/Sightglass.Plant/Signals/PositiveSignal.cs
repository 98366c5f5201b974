using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A signal, never below zero.</summary>
public sealed class PositiveSignal(Signal signal) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Max(signal.Evaluate(bank), Lanes.Of(0));

    public override void TellReads(SignalReads reads) => reads.Add(signal);
}
