using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The same number always.</summary>
public sealed class ConstantSignal(double value) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Of(value);

    public override void TellReads(SignalReads reads)
    {
    }
}
