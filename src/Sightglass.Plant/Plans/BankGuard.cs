using Sightglass.Basics.Numbers;
using Sightglass.Network.Groups;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>Lets a signal of the plant watch a network's steps.</summary>
public sealed class BankGuard(LaneBank bank, int network, Signal margin) : Guard
{
    public override Lanes Evaluate(in StateView state)
    {
        bank.LookAt(network, state);
        return margin.Evaluate(bank);
    }
}
