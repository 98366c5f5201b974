using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>One potential of a network less another, plus an offset.</summary>
public sealed class DifferenceSignal(int network, Amount first, Amount second, double offset = 0) : Signal
{
    private readonly PotentialSignal _first = new(network, first, 1, offset);
    private readonly PotentialSignal _second = new(network, second);

    public override Lanes Evaluate(LaneBank bank) => _first.Evaluate(bank) - _second.Evaluate(bank);

    public override void TellReads(SignalReads reads) => reads.AddNetwork(network);
}
