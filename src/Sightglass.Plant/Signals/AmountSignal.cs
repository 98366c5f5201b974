using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>amount·factor + offset.</summary>
public sealed class AmountSignal(int network, Amount amount, double factor = 1, double offset = 0) : Signal
{
    public override Lanes Evaluate(LaneBank bank) =>
        Lanes.Fma(bank.View(network).AmountOf(amount), Lanes.Of(factor), Lanes.Of(offset));

    public override void TellReads(SignalReads reads) => reads.AddNetwork(network);
}
