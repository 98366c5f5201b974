using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests;

/// <summary>A card that calls another, run.</summary>
public sealed class CalledCardRunTests
{
    private const string Situation = """
      standing:
        people:
          - { role: hand, at: [cab] }
        start: { fill of compartment A: 50 %, fill of compartment B: 50 %, fill of compartment C: 50 %, throttle: idle }
    """;

    private const string Caller = "Card: Caller\nFor: hand\nDone when: engine runs.\n\n1. Go to the panel.\n2. Do card \"Swap\" with X = A.\n3. Read sight glass A as P.\n";
    private const string Swap = "Card: Swap\nFor: hand\nLet X be the compartment, one of A, B.\nMust never: engine starves.\nDone when: engine runs.\n\n1. Open supply valve X.\n2. Check that supply valve X is closed. If not, go to the end.\n3. Stop: closed.\n";

    [Fact]
    public void Run_CardThatCalls_DoesTheOthersStepsAndGoesOn()
    {
        Plan plan = TradeMachine.Plan(Situation, Caller, Swap);
        using Rig rig = new(plan, "standing");
        rig.World.Begin(Rig.RunOf(plan, "Caller"));
        rig.World.RunTo(SimTime.Never);
        Assert.Equal(OutcomeKind.Done, rig.World.Run!.Ended);
        Assert.Equal(
            [(1, 0), (2, 0), (1, 1), (2, 1), (3, 0)],
            rig.World.Journal!.Where(j => j.Kind is JournalKind.Deed or JournalKind.Finding).Select(j => (j.Step, j.Depth)));
        Assert.Equal(3, rig.World.Run.Step);
        Assert.Equal(1, rig.World.GetSlot(plan.Items["supply valve A"].Position!.Value));
    }

    /// <summary>The called card's must-never counts from the start, before it is taken in hand.</summary>
    [Fact]
    public void Run_MustNeverOfTheCalledCard_FailsTheCaller()
    {
        string caller = Caller.Replace("2. Do card", "2. Close supply valve C.\n3. Wait 2 h.\n4. Do card", StringComparison.Ordinal).Replace("\n3. Read", "\n5. Read", StringComparison.Ordinal);
        Plan plan = TradeMachine.Plan(Situation, caller, Swap);
        using Rig rig = new(plan, "standing");
        rig.World.Begin(Rig.RunOf(plan, "Caller"));
        rig.World.RunTo(SimTime.Never);
        Assert.Equal((OutcomeKind.Failed, "engine starves", 3), (rig.World.Run!.Ended, rig.World.Run.Mechanism, rig.World.Run.Step));
    }
}
