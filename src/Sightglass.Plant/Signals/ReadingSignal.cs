using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>
/// What an instrument would show if it showed every digit: the true value with the bias, or what it is stuck at, within its scale.
/// What it does show is this rounded to its resolution.
/// </summary>
public sealed class ReadingSignal(Signal truth, Slot bias, Slot stuck, Slot held, double minimum, double maximum) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes free = Lanes.Min(Lanes.Max(truth.Evaluate(bank) + bank.SlotLanes(bias), Lanes.Of(minimum)), Lanes.Of(maximum));
        return Lanes.Select(Lanes.Less(Lanes.Of(0.5), bank.SlotLanes(stuck)), bank.SlotLanes(held), free);
    }

    public override void TellReads(SignalReads reads)
    {
        reads.Add(truth);
        reads.Add(bias);
        reads.Add(stuck);
        reads.Add(held);
    }
}
