using Sightglass.Basics.Numbers;
using Sightglass.Network.Compile;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>
/// Height of a tank's surface above the middle of its floor, or at a place beside it: on a grade (front uphill positive) the surface stands
/// higher over the floor towards the rear, with cant (right side high positive) towards the left.
/// </summary>
/// <param name="network">Of the tank.</param>
/// <param name="amount">Of the tank.</param>
/// <param name="weightParameter">Where ρ·g·cosθ stands.</param>
/// <param name="surfacePressure">Pa.</param>
/// <param name="rearward">Metres of the place behind the middle.</param>
/// <param name="rightward">Metres of the place to the right of the middle.</param>
/// <param name="grade">Slot of the grade.</param>
/// <param name="cant">Slot of the cant.</param>
public sealed class LevelSignal(
    int network, Amount amount, int weightParameter, double surfacePressure, double rearward, double rightward, Slot grade, Slot cant) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes middle = (bank.View(network).PotentialOf(amount) - Lanes.Of(surfacePressure)) / bank.View(network).ParameterOf(weightParameter);
        return Lanes.Fma(bank.SlotLanes(grade), Lanes.Of(rearward), Lanes.Fma(bank.SlotLanes(cant), Lanes.Of(-rightward), middle));
    }

    public override void TellReads(SignalReads reads)
    {
        reads.AddNetwork(network);
        reads.Add(grade);
        reads.Add(cant);
    }
}
