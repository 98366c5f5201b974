using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;
using Xunit;

namespace Sightglass.World.Tests;

public sealed class SentinelTests
{
    /// <summary>The engine stops by a switch: what waits for that is told at the same moment, not when it looks again.</summary>
    [Fact]
    public void Wait_SlotJumpsBySwitch_ToldAtOnce()
    {
        Plan plan = Books.Curlew;
        DiagnosticList found = new();
        SourceText text = new("wait.card", """
            Card: Wait for the engine to stop
            For: mechanical

            Use when: the engine is heard to stop.
            Done when: the engine is stopped.

            1. Wait 1 s.
            """);
        Card card = CardReader.Read(text, plan.Book, found)!;
        Assert.False(card.HasErrors, string.Join('\n', found));
        SituationStart start = SituationStart.Bind(plan, plan.Book.Situations["starving engine"], found)!;
        using LaneBank bank = new(plan);
        World world = new(bank, 0) { Journal = [] };
        start.Apply(world, 1, 0);
        world.Begin(new CardRun([new(null, CardCompiler.Compile(card, plan.Book))]));
        world.RunTo(SimTime.FromSeconds(3000));
        SimTime stopped = world.Journal!.Single(j => j.Text.StartsWith("Engine stops", StringComparison.Ordinal)).Time;
        Assert.Equal(OutcomeKind.Done, world.Run!.Ended);
        Assert.InRange((world.Run.BeganAt - stopped).Seconds, 0, plan.Book.Roles["mechanical"].ReactionSeconds + 0.001);
    }
}
