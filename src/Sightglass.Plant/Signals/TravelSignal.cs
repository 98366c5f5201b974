using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>How far a piston is out, m, by the volume of the air behind it: (m·R·T/p − V₀)/A, never below zero.</summary>
/// <param name="network">Of the air.</param>
/// <param name="air">Its amount, kg; the potential is its absolute pressure, Pa.</param>
/// <param name="specificEnergy">R·T, J/kg.</param>
/// <param name="clearance">V₀, m³, with the piston home.</param>
/// <param name="area">A, m².</param>
public sealed class TravelSignal(int network, Amount air, double specificEnergy, double clearance, double area) : Signal
{
    private readonly PotentialSignal _pressure = new(network, air);

    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes volume = bank.View(network).AmountOf(air) * Lanes.Of(specificEnergy) / Lanes.Max(_pressure.Evaluate(bank), Lanes.Of(1));
        return Lanes.Max((volume - Lanes.Of(clearance)) * Lanes.Of(1 / area), Lanes.Of(0));
    }

    public override void TellReads(SignalReads reads) => reads.AddNetwork(network);
}
