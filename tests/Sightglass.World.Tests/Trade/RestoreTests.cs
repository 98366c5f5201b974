using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;
using Sightglass.World.Snapshots;

namespace Sightglass.World.Tests.Trade;

/// <summary>A world that is killed and restored ends as one that never stopped.</summary>
public sealed class RestoreTests(ITestOutputHelper output)
{
    /// <summary>
    /// The demo's leak card, killed at 200 random moments of its run (walking, waiting, in the middle of steps and of holding the result), each time
    /// restored from text into new memory with a fresh run of the card: same outcome, same hash, same steps.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(12)]
    public void Restore_CardKilledAt200Moments_SameOutcomeAndHash(ulong number)
    {
        Plan plan = Books.Curlew;
        ImmutableArray<ProgramChoice> choices = Rig.ChoicesOf(plan, "Empty a leaking compartment");
        using LaneBank bank = new(plan);
        World whole = Begin(bank, plan, choices, number);
        whole.RunTo(SimTime.Never);
        Outcome expected = whole.Run!.Outcome;
        Assert.Equal(OutcomeKind.Done, expected.Kind);

        Random chance = new(7 + (int)number);
        double began = whole.Run.BeganAt.Seconds;
        double[] moments = [.. Enumerable.Range(0, 200).Select(i => i % 2 == 0 ? chance.NextDouble() * whole.Now.Seconds : began + (chance.NextDouble() * 90)).Order()];
        HashSet<string> caught = [];
        LaneBank memory = new(plan);
        World current = Begin(memory, plan, choices, number);
        for (int i = 0; i < moments.Length; i++)
        {
            current.RunTo(SimTime.FromSeconds(moments[i]));
            caught.Add(Doing(current));
            string kept = current.Save().ToJson();
            memory.Dispose();
            memory = new(plan);
            current = new(memory, i % 8);
            current.Restore(WorldSnapshot.FromJson(kept), new CardRun(choices));
        }

        current.RunTo(SimTime.Never);
        Assert.Equal(expected, current.Run!.Outcome);
        Assert.Equal(whole.Steps, current.Steps);
        memory.Dispose();
        output.WriteLine($"{expected} killed while {string.Join(", ", caught.Order(StringComparer.Ordinal))}");
        Assert.Equal(whole.People.Any(p => p.Walked > 0), caught.Contains("walking"));
        Assert.True(caught.Count >= 4, "the moments met too little");
    }

    /// <summary>Looked at every 0.1 s or every minute: same hash, also with a card at work.</summary>
    [Fact]
    public void Run_SampledEveryTenthOfASecondWithACard_SameOutcome()
    {
        Assert.Equal(Sampled(60), Sampled(0.1));

        static Outcome Sampled(double every)
        {
            Plan plan = Books.Curlew;
            using LaneBank bank = new(plan);
            World world = Begin(bank, plan, Rig.ChoicesOf(plan, "Empty a leaking compartment"), 5);
            long n = 0;
            world.OnSample = w =>
            {
                foreach (Plant.Signals.Signal signal in plan.Signals)
                {
                    _ = w.Value(signal);
                }

                w.SampleAt(SimTime.FromSeconds(++n * every));
            };
            world.SampleAt(SimTime.Zero);
            world.RunTo(SimTime.FromSeconds(600));
            world.OnSample = _ => { };
            world.RunTo(SimTime.Never);
            return world.Run!.Outcome;
        }
    }

    private static World Begin(LaneBank bank, Plan plan, ImmutableArray<ProgramChoice> choices, ulong number)
    {
        World world = new(bank, 0);
        SituationStart.Bind(plan, plan.Book.Situations["leaking compartment"], new DiagnosticList())!.Apply(world, 1, number);
        world.Begin(new CardRun(choices));
        return world;
    }

    private static string Doing(World world) =>
        world.People.Any(p => p.Place < 0) ? "walking" : world.Run!.Program is null ? "not begun" : $"step {world.Run.Step}";
}
