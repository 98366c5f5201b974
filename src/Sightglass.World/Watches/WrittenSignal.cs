using Sightglass.Basics.Numbers;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.World.Watches;

/// <summary>A comparison of numbers that one run has written down: 1 where it holds, −1 where not.</summary>
/// <param name="condition">The comparison.</param>
/// <param name="written">Where that run writes.</param>
internal sealed class WrittenSignal(Condition.Compare condition, double[] written) : Signal
{
    private const double Slack = 1e-9;

    public override Lanes Evaluate(LaneBank bank) => Lanes.Of(Holds() ? 1 : -1);

    private bool Holds()
    {
        double reading = condition.Expression.Evaluate(written);
        double slack = Slack * (Math.Abs(condition.Value) + 1);
        return condition.Comparison switch
        {
            Comparison.AtLeast => reading >= condition.Value - slack,
            Comparison.AtMost => reading <= condition.Value + slack,
            Comparison.MoreThan => reading > condition.Value + slack,
            Comparison.LessThan => reading < condition.Value - slack,
            _ => Math.Abs(reading - condition.Value) <= slack,
        };
    }
}
