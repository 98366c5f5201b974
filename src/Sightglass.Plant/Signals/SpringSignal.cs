using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Force of a spring that the higher of two pressures holds back: none from a pressure up, and none while either slot says so.</summary>
/// <param name="network">Of both pressures.</param>
/// <param name="first">A pressure.</param>
/// <param name="second">Another, or the same.</param>
/// <param name="none">Pa absolute from which there is none.</param>
/// <param name="perPascal">N for each Pa below.</param>
/// <param name="released">Above one half there is none.</param>
/// <param name="broken">The same.</param>
/// <param name="alone">Above one half the second pressure does not count.</param>
public sealed class SpringSignal(int network, Amount first, Amount second, double none, double perPascal, Slot released, Slot broken, Slot alone) : Signal
{
    private readonly PotentialSignal _first = new(network, first);
    private readonly PotentialSignal _second = new(network, second);

    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes held = _first.Evaluate(bank);
        held = Lanes.Select(Lanes.Less(Lanes.Of(0.5), bank.SlotLanes(alone)), held, Lanes.Max(held, _second.Evaluate(bank)));
        Lanes force = Lanes.Max((Lanes.Of(none) - held) * Lanes.Of(perPascal), Lanes.Of(0));
        Lanes off = Lanes.Max(bank.SlotLanes(released), bank.SlotLanes(broken));
        return Lanes.Select(Lanes.Less(Lanes.Of(0.5), off), Lanes.Of(0), force);
    }

    public override void TellReads(SignalReads reads)
    {
        reads.AddNetwork(network);
        reads.Add(released);
        reads.Add(broken);
        reads.Add(alone);
    }
}
