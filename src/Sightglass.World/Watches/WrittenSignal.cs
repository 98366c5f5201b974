using Sightglass.Basics.Numbers;
using Sightglass.Cards.Programs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.World.Watches;

/// <summary>A comparison of numbers that one run has written down, or whether they were: 1 where it holds, −1 where not.</summary>
/// <param name="condition">What is to hold: <see cref="Condition.Compare"/> or <see cref="Condition.Known"/>.</param>
/// <param name="written">Where that run writes.</param>
internal sealed class WrittenSignal(Condition condition, double[] written) : Signal
{
    private const double Slack = 1e-9;

    public override Lanes Evaluate(LaneBank bank) => Lanes.Of(Holds() ? 1 : -1);

    public override void TellReads(SignalReads reads)
    {
    }

    private bool Holds() => condition switch
    {
        Condition.Compare compare => Holds(compare),
        Condition.Known known => known.Expression.FirstUnread(written) < 0,
        _ => throw new InvalidOperationException($"Not about numbers written down: {condition.GetType().Name}."),
    };

    private bool Holds(Condition.Compare compare)
    {
        double reading = compare.Expression.Evaluate(written);
        double slack = Slack * (Math.Abs(compare.Value) + 1);
        return compare.Comparison switch
        {
            Comparison.AtLeast => reading >= compare.Value - slack,
            Comparison.AtMost => reading <= compare.Value + slack,
            Comparison.MoreThan => reading > compare.Value + slack,
            Comparison.LessThan => reading < compare.Value - slack,
            _ => Math.Abs(reading - compare.Value) <= slack,
        };
    }
}
