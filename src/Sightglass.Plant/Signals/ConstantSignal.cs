using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>The same number always.</summary>
public sealed class ConstantSignal(double value) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => Lanes.Of(value);

    public override Noted Note(SignalNotes notes) => Noted.Of(value);

    public override void TellReads(SignalReads reads)
    {
    }
}
