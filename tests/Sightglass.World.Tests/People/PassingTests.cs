using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Snapshots;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.People;

/// <summary>Dangers on the way: of places that are left, passed and walked round. The way from ahead to the far end is 12 m at 1.2 m/s, the middle half-way.</summary>
public sealed class PassingTests
{
    private const string Body = """
        book: Passing
        length: 20 m
        width: 3 m
        roles: { hand: { walks: 1.2 m/s, reacts in: 1 s } }
        places:
          ahead: { x: 4 m, y: 2.4 m }
          middle: { x: 10 m, y: 2.4 m }
          far end: { x: 16 m, y: 2.4 m }
          coupler: { x: 20.5 m, y: 0 m }
          beyond: { x: 16 m, y: -2.4 m }
          hall: { x: 10 m, y: 0 m, z: 1.5 m }
          end room: { x: 12 m, y: 0 m, z: 1.5 m }
        legs:
          - { from: ahead, to: hall, takes: 5 s }
          - { from: hall, to: end room, takes: 5 s }
        systems: { air: { medium: brake, alive: yes } }
        items:
          bottle: { kind: reservoir, system: air, volume: 20 mL, start pressure: 100 psi }
          bottle cock: { kind: hand valve, system: air, from: bottle, to: outside, diameter: 20 mm, who: [hand], places: [ahead] }
          receiver: { kind: reservoir, system: air, volume: 10 m^3, start pressure: 100 psi }
          receiver cock: { kind: hand valve, system: air, from: receiver, to: outside, diameter: 10 mm, who: [hand], places: [ahead] }
        facts:
          the receiver is full: { is: pressure of receiver > 1 psi }
        protections:
          cover: { chocks: [receiver cock], text: A cover. }
        hazards:
          a puff: { places: [middle], when: flow of bottle cock > 100 L/min, danger: "A puff. It can blind. Keep away." }
          a blast: { places: [middle], when: flow of receiver cock > 100 L/min, protection: cover, danger: "A blast. It can blind. Keep away." }
          going between: { places: [coupler], danger: "Vehicles move. They crush. Keep out." }
          live rails: { places: [hall], protection: cover, danger: "Live rails. They kill. Have them covered." }
        situations:
          calm: { people: [ { role: hand, at: [ahead] } ] }
          at the middle: { people: [ { role: hand, at: [middle] } ] }

        """;

    /// <summary>
    /// The bottle's 20 mL are gone within 0.1 s through 20 mm, within the first step after its cock is turned. Setting out at 1 s, a walker is within the middle from 3.5 s
    /// (half-way to it) to 8.5 s (half-way beyond), and whoever sets out from there until 3.5 s.
    /// </summary>
    [Theory]
    [InlineData("calm", "far end", 3.4, false)]
    [InlineData("calm", "far end", 3.6, true)]
    [InlineData("calm", "far end", 8.4, true)]
    [InlineData("calm", "far end", 8.6, false)]
    [InlineData("calm", "middle", 5.9, false)]
    [InlineData("calm", "middle", 6.1, true)]
    [InlineData("at the middle", "far end", 3.4, true)]
    [InlineData("at the middle", "far end", 3.6, false)]
    public void Walk_DangerForAMoment_BitesWhoIsWithinItsPlace(string situation, string to, double at, bool bites)
    {
        using Rig rig = new(Rig.Compile(Body), situation);
        rig.World.Do(new WorldAction.Walk(0, to), SimTime.FromSeconds(1));
        rig.Do(at, "bottle cock", "open");
        Assert.True(rig.At(at + 0.1, "flow of bottle cock") < 0.1e-3);
        rig.World.RunTo(SimTime.FromSeconds(30));
        Assert.Equal(bites ? ["a puff"] : [], Bitten(rig));
    }

    [Theory]
    [InlineData("open", "a blast, without protection", "Go to the far end.")]
    [InlineData("closed", "", "Go to the far end.")]
    [InlineData("open", "", "Chock the receiver cock.", "Go to the far end.")]
    public void Run_PastADanger_FailsWithoutProtection(string cock, string mechanism, params string[] steps)
    {
        using Rig rig = new(WithCard(steps), "calm");
        rig.Do(0.5, "receiver cock", cock);
        rig.World.RunTo(SimTime.FromSeconds(1));
        rig.World.Begin(Rig.RunOf(rig.Plan, "Work"));
        rig.World.RunTo(SimTime.Never);
        Assert.Equal((mechanism.Length == 0 ? OutcomeKind.Done : OutcomeKind.Failed, mechanism), (rig.World.Run!.Ended, rig.World.Run.Mechanism));
    }

    /// <summary>What is dangerous in itself is known: nobody passes it who can go round, and going round takes as long. Where there is no other way it is met.</summary>
    [Fact]
    public void Walk_PlaceThatIsDangerousInItself_IsGoneRoundWherePossible()
    {
        Plan plan = Rig.Compile(Body);
        Assert.Equal("beyond", plan.Ways.Places[plan.Ways.Next(plan.Ways.IndexOf("far end"), plan.Ways.IndexOf("beyond"))].Name);
        Assert.Equal((4.5 + 2.4) * 2 / 1.3, plan.Ways.Seconds(plan.Ways.IndexOf("far end"), plan.Ways.IndexOf("beyond")), 1e-9);
        Assert.Empty(Walked(plan, "beyond"));
        Assert.Equal(["going between"], Walked(plan, "coupler"));
        Assert.Equal(["live rails, without protection"], Walked(plan, "end room"));
    }

    /// <summary>A trial steps what a hazard on the way depends on.</summary>
    [Fact]
    public void AskedSignals_CardThatGoesPastADanger_AsksForIt()
    {
        Plan plan = WithCard("Go to the far end.");
        IEnumerable<Plant.Signals.Signal> asked = AskedSignals.Of(plan, Rig.ChoicesOf(plan, "Work"), plan.Book.Situations["calm"]);
        Assert.Contains(plan.Hazards["a blast"], asked);
        Assert.DoesNotContain(plan.Hazards["a blast"], AskedSignals.Of(plan, Rig.ChoicesOf(plan, "Work"), plan.Book.Situations["calm"] with { People = [] }));
    }

    /// <summary>Kept before the middle, within it and after it: ends the same.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(9)]
    public void Restore_OnTheWay_EndsTheSame(double at)
    {
        using Rig whole = Going();
        whole.World.RunTo(SimTime.FromSeconds(30));
        using Rig first = Going();
        first.World.RunTo(SimTime.FromSeconds(at));
        string kept = first.World.Save().ToJson();
        using Rig second = new(Rig.Compile(Body), "calm");
        second.World.Restore(WorldSnapshot.FromJson(kept));
        second.World.RunTo(SimTime.FromSeconds(30));
        Assert.Equal(whole.World.Hash, second.World.Hash);
        Assert.Equal(["a puff"], Bitten(whole));
        Assert.Equal<string>(Bitten(whole), [.. Bitten(first), .. Bitten(second)]);
        Assert.Equal(whole.World.People[0].Place, second.World.People[0].Place);
    }

    private static Plan WithCard(params string[] steps) =>
        Rig.Compile(Body, "Card: Work\nFor: hand\nDone when: the receiver is full.\n\n" + string.Concat(steps.Select((s, i) => $"{i + 1}. {s}\n")));

    private static Rig Going()
    {
        Rig rig = new(Rig.Compile(Body), "calm");
        rig.World.Do(new WorldAction.Walk(0, "far end"), SimTime.FromSeconds(1));
        rig.Do(8, "bottle cock", "open");
        return rig;
    }

    private static IEnumerable<string> Walked(Plan plan, string to)
    {
        using Rig rig = new(plan, to == "end room" ? "calm" : "at the middle");
        rig.World.Do(new WorldAction.Walk(0, to), SimTime.FromSeconds(1));
        rig.World.RunTo(SimTime.FromSeconds(60));
        return Bitten(rig);
    }

    private static string[] Bitten(Rig rig) =>
        [.. rig.World.Journal!.Where(j => j.Kind == JournalKind.Hazard).Select(j => j.Text[(j.Text.IndexOf(':', StringComparison.Ordinal) + 2)..j.Text.IndexOf(". ", StringComparison.Ordinal)])];
}
