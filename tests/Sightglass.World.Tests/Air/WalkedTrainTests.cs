using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>A card that goes from car to car and looks at the lamp of each.</summary>
public sealed class WalkedTrainTests
{
    private const string Walk = """
        Card: Walk
        For: hand
        Done when: brakes of every car are applied.

        1. Wait 60 s.
        2. For each car from the first to the last:
           - Go to the front, right of the car.
           - Check that the indicator of the car is lit. If not, stop: the indicator of {car} is dark.

        """;

    private const string Back = """
        Card: Back
        For: hand
        Done when: not brakes of a car are applied.

        1. For each car from the last to car 2:
           - Go to the front, right of the car.
           - If the indicator of the car is dark, go on with the next car.
           - Stop: the indicator of {car} is lit.

        """;

    /// <summary>Of the machine with six coaches, one person at the head of it, the handle where it says, and a lamp at fault.</summary>
    private static Plan Plan(string handle, string fault)
    {
        string situation = $"""
              walked:
                train: six coaches
                people: [ {"{"} role: hand, at: [cab] {"}"} ]
                start: {"{"} front angle cock of car 6: closed, front main reservoir cock of car 6: closed, brake handle: {handle} {"}"}
                faults: [ {fault} ]

            """;
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", TrainMachine.Text + "\n" + situation)], [new("walk.card", Walk), new("back.card", Back)], KindLibrary.Catalog, found);
        Assert.True(book is not null && !found.HasErrors, string.Join('\n', found));
        Plan? plan = PlanCompiler.Compile(book.Coupled("six coaches"), found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }

    [Fact]
    public void Run_EveryLampLit_WalksTheTrainToItsEnd()
    {
        Plan plan = Plan("full service", "");
        using Rig rig = new(plan, "walked");
        rig.World.Begin(Rig.RunOf(plan, "Walk"));
        rig.World.RunTo(SimTime.Never);
        Assert.Equal((OutcomeKind.Done, ""), (rig.World.Run!.Ended, rig.World.Run.Mechanism));
        Assert.Equal(
            Enumerable.Range(1, 6).SelectMany(n => new[] { $"You went to the front, right of car {n}.", $"You checked, and it was so: the indicator of car {n} is lit." }),
            rig.World.Journal!.Where(j => j.Step == 2 && (j.Kind is JournalKind.Deed or JournalKind.Finding)).Select(j => j.Text));
        Place[] ends = [plan.Book.Places["cab"], plan.Book.Places["front, right of car 6"]];
        Assert.True(rig.World.People[0].Walked >= Math.Abs(ends[1].Position.X - ends[0].Position.X), $"{rig.World.People[0].Walked} m");
    }

    /// <summary>Burnt out, a lamp is dark though the brake is applied; one that stays lit says applied of a brake that has let go.</summary>
    [Theory]
    [InlineData("Walk", "full service", "burnt out", 3, "the indicator of car 3 is dark")]
    [InlineData("Back", "release", "stays lit", 5, "the indicator of car 5 is lit")]
    [InlineData("Back", "release", "stays lit", 1, "")]
    [InlineData("Back", "release", "burnt out", 5, "")]
    public void Run_LampAtFault_SeesTheLampAndNotTheBrake(string card, string handle, string fault, int car, string stopped)
    {
        Plan plan = Plan(handle, $"{{ fault: {fault}, on: [indicator of car {car}], after: 10 s, chance: 100 % }}");
        using Rig rig = new(plan, "walked");
        rig.World.Begin(Rig.RunOf(plan, card));
        rig.World.RunTo(SimTime.Never);
        Assert.Equal((stopped.Length > 0 ? OutcomeKind.Stopped : OutcomeKind.Done, stopped), (rig.World.Run!.Ended, rig.World.Run.Mechanism));
    }

    [Fact]
    public void Restore_KilledOnTheWalk_SameOutcome()
    {
        Plan plan = Plan("full service", "{ fault: burnt out, on: [indicator of car 5], after: 100 s, chance: 100 % }");
        using Rig rig = new(plan, "walked");
        rig.World.Begin(Rig.RunOf(plan, "Walk"));
        rig.World.RunTo(SimTime.Never);
        Outcome expected = rig.World.Run!.Outcome;
        Assert.Equal("the indicator of car 5 is dark", expected.Mechanism);

        Random chance = new(4);
        using Rig begun = new(plan, "walked");
        begun.World.Begin(Rig.RunOf(plan, "Walk"));
        LaneBank? memory = null;
        World current = begun.World;
        foreach (double at in Enumerable.Range(0, 60).Select(_ => chance.NextDouble() * expected.Time.Seconds).Order().ToArray())
        {
            current.RunTo(SimTime.FromSeconds(at));
            string kept = current.Save().ToJson();
            memory?.Dispose();
            memory = new(plan);
            current = new(memory, chance.Next(8));
            current.Restore(WorldSnapshot.FromJson(kept), Rig.RunOf(plan, "Walk"));
        }

        current.RunTo(SimTime.Never);
        Assert.Equal(expected, current.Run!.Outcome);
        memory?.Dispose();
    }
}
