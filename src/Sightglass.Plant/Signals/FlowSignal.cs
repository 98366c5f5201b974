using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>First flow of a path times a factor.</summary>
public sealed class FlowSignal(int network, PathHandle path, double factor = 1) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => bank.View(network).FlowOf(path) * Lanes.Of(factor);

    public override void TellReads(SignalReads reads) => reads.AddNetwork(network);
}
