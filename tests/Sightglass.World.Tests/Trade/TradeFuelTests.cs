using Sightglass.Basics.Time;
using Sightglass.World.Journal;
using Sightglass.World.Runs;

namespace Sightglass.World.Tests.Trade;

/// <summary>The trade's fuel scenarios 1 to 7: common practice, no source; numbers computed from the assumptions of <see cref="TradeMachine"/>.</summary>
public sealed class TradeFuelTests
{
    private const double Minute = 60;
    private const double Hour = 3600;
    private const double Litre = 1e-3;

    private const string Still = """
          still:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of compartment A: 200 L, volume of compartment B: 1000 L, volume of compartment C: 1600 L }

        """;

    /// <summary>Supply and return on one compartment: only what is burnt is missing; 900 L take 30 h. 0.1 %: the lines fill at the start.</summary>
    [Fact]
    public void Trade_1_SupplyAndReturnOnOne_FallsByWhatIsBurnt()
    {
        using Rig rig = new(TradeMachine.Plan(Still), "still");
        rig.Do(0, "return valve C", "open");
        double before = rig.At(Minute, "volume of compartment C");
        Assert.Equal(900 * Litre, before - rig.At((30 * Hour) + Minute, "volume of compartment C"), 0.9 * Litre);
    }

    /// <summary>Return elsewhere: the whole flow of the pump leaves; 900 L take 100 min, and 850 of them come up in the other.</summary>
    [Fact]
    public void Trade_1_ReturnElsewhere_FallsByTheFlowOfThePump()
    {
        using Rig rig = new(TradeMachine.Plan(Still), "still");
        rig.Do(0, "return valve A", "open");
        double before = rig.At(Minute, "volume of compartment C");
        double other = rig.At(Minute, "volume of compartment A");
        Assert.Equal(900 * Litre, before - rig.At(101 * Minute, "volume of compartment C"), 0.9 * Litre);
        Assert.Equal(850 * Litre, rig.At(101 * Minute, "volume of compartment A") - other, 0.9 * Litre);
    }

    /// <summary>
    /// A hole 0.5 m below the level with 1,000 L above it, the engine burning from the same compartment. 2 %: the surface crosses the hole's
    /// own height, which is worth 12 to 24 L here. In the end nothing more leaks.
    /// </summary>
    [Theory]
    [InlineData("6 mm", 0.006, 790, 10)]
    [InlineData("12 mm", 0.012, 934, 4)]
    public void Trade_2_HoleWhileBurning_SpillsSoMuchInTheEnd(string diameter, double metres, double litres, double hours)
    {
        using Rig rig = new(TradeMachine.Plan(Leaking(diameter)), "leaking");
        rig.Do(0, "return valve C", "open");
        double spilled = rig.At(hours * Hour, "spilled of compartment C");
        Assert.Equal(litres * Litre, spilled, 0.02 * litres * Litre);
        double derived = TradeMachine.SpilledInTheEnd(2, 0.5, metres, 0.5 * TradeMachine.LitrePerMinute);
        Assert.Equal(derived, spilled, 0.02 * derived);
        Assert.Equal(0, rig.At(hours * Hour, "leak flow of compartment C"));
    }

    /// <summary>The same with a transfer out at 9 L/min. 4 %: the hole's own height again, on a smaller number.</summary>
    [Theory]
    [InlineData("6 mm", 192, 90)]
    [InlineData("12 mm", 475, 58)]
    public void Trade_2_HoleWhileTransferring_SpillsLess(string diameter, double litres, double minutes)
    {
        using Rig rig = new(TradeMachine.Plan(Leaking(diameter)), "leaking");
        rig.Do(0, "return valve A", "open");
        Assert.Equal(litres * Litre, rig.At(minutes * Minute, "spilled of compartment C"), 0.04 * litres * Litre);
        Assert.InRange(rig.At(minutes * Minute, "level of compartment C"), 0.29, 0.31);
        Assert.Equal(0, rig.At((minutes + 10) * Minute, "leak flow of compartment C"));
    }

    /// <summary>Room for 400 L at a net 8.5 L/min is full after 47 min; a wait of at most 90 min spills 365 L. 1 %: the vent's riser.</summary>
    [Fact]
    public void Trade_3_ReceiverWithRoomFor400_OverflowsBeforeTheWaitIsOver()
    {
        const string Full = """
              full:
                people: [ { role: hand, at: [panel] } ]
                start: { volume of compartment A: 2000 L, volume of compartment B: 1000 L, volume of compartment C: 2300 L, return valve A: open }

            """;
        using Rig rig = new(TradeMachine.Plan(Full), "full");
        Assert.True(rig.At(46.5 * Minute, "overflow of compartment A") < 1e-9);
        Assert.Equal(8.5 * TradeMachine.LitrePerMinute, rig.At(48 * Minute, "overflow of compartment A"), 0.01 * 8.5 * TradeMachine.LitrePerMinute);
        Assert.Equal(365 * Litre, rig.At(90 * Minute, "spilled of compartment A"), 4 * Litre);
    }

    /// <summary>The same as a card: the wait reads well and fails at 47 min. 1 %, and 10 s for the walk and the look before.</summary>
    [Fact]
    public void Trade_3_CardThatWaitsNinetyMinutes_FailsOfTheOverflow()
    {
        const string Situation = """
              full:
                people: [ { role: hand, at: [panel] } ]
                start: { volume of compartment A: 2000 L, volume of compartment B: 1000 L, volume of compartment C: 2300 L }

            """;
        const string Text = """
            Card: Empty C into A
            For: hand; told: desk

            Use when: the sight glass C shows at least 20 cm.
            Must never: the engine starves; a compartment overflows.
            Done when: the engine runs. Stays so for 10 min.

            1. Open the return valve A.
            2. Wait until the sight glass C shows at most 20 cm, at most 90 min. If not, go to step 3.
            3. Tell the desk: the wait is over.
            """;
        using Rig rig = new(TradeMachine.Plan(Situation, Text), "full");
        CardRun run = Work(rig, "Empty C into A");
        Assert.Equal((OutcomeKind.Failed, "a compartment overflows", 2), (run.Ended, run.Mechanism, run.Step));
        Assert.InRange(run.EndedAt.Seconds, 46.6 * Minute, (47.6 * Minute) + 10);
    }

    /// <summary>The pickup stands above the lowest visible level: waiting for an empty glass starves the engine, opening first does not.</summary>
    [Theory]
    [InlineData("empty", OutcomeKind.Failed)]
    [InlineData("low", OutcomeKind.Done)]
    public void Trade_4_NextSupplyOpenedLate_EngineStarves(string word, OutcomeKind expected)
    {
        string text = $"""
            Card: Change over to B
            For: hand; told: desk

            Use when: the sight glass C shows at least 3 cm.
            Must never: the engine starves; a compartment overflows.
            Done when: the engine runs. Stays so for 10 min.

            1. Go to the panel.
            2. Wait until the sight glass C shows {word}, at most 8 h. If not, go to step 3.
            3. Open the supply valve B.
            4. Close the supply valve C.
            """;
        const string Situation = """
              running down:
                people: [ { role: hand, at: [cab] } ]
                start: { volume of compartment A: 200 L, volume of compartment B: 1000 L, volume of compartment C: 500 L, return valve A: open }

            """;
        using Rig rig = new(TradeMachine.Plan(Situation, text), "running down");
        CardRun run = Work(rig, "Change over to B");
        Assert.Equal(expected, run.Ended);
        Assert.Equal(expected == OutcomeKind.Done ? "" : "engine starves", run.Mechanism);
        Assert.Equal(expected == OutcomeKind.Done ? 4 : 2, run.Step);
        double end = run.EndedAt.Seconds + 60;
        Assert.Equal(expected == OutcomeKind.Done, rig.At(end, "running of engine") > 0);
        Assert.Equal(expected == OutcomeKind.Failed, rig.At(end, "air of manifold") > 0.1);
    }

    /// <summary>The pump stands still with the engine: nothing more comes to A, and C goes on leaking. At rest the world takes few steps.</summary>
    [Fact]
    public void Trade_5_EngineStopped_TransferStopsAndTheLeakGoesOn()
    {
        using Rig rig = new(TradeMachine.Plan(Leaking("12 mm")), "leaking");
        rig.Do(0, "return valve A", "open");
        rig.Do(10 * Minute, "engine", "stopped");
        double received = rig.At(11 * Minute, "volume of compartment A");
        double spilled = rig.At(11 * Minute, "spilled of compartment C");
        Assert.True(rig.At(11 * Minute, "leak flow of compartment C") > 10 * TradeMachine.LitrePerMinute);
        Assert.Equal(received, rig.At(41 * Minute, "volume of compartment A"), 1e-6);
        Assert.True(rig.At(41 * Minute, "spilled of compartment C") > spilled + (200 * Litre));
        Assert.Equal(1000 * Litre, rig.At(41 * Minute, "volume of compartment B"), 1e-9);
        Assert.True(rig.World.Steps < 1000, $"{rig.World.Steps} steps");
    }

    /// <summary>With the supply valves open the manifold refills C: B loses what C leaks, and more is spilled than stood above the hole in C.</summary>
    [Fact]
    public void Trade_5_EngineStoppedSuppliesOpen_ManifoldRefillsTheLeakingOne()
    {
        const string Open = """
              open:
                people: [ { role: hand, at: [panel] } ]
                start: { volume of compartment A: 1600 L, volume of compartment B: 1600 L, volume of compartment C: 1600 L, engine: stopped, supply valve A: open, supply valve B: open }
                faults: [ { fault: leak, on: [compartment C], after: 0 min, chance: 100 %, diameter: 12 mm, height: 300 mm } ]

            """;
        using Rig rig = new(TradeMachine.Plan(Open), "open");
        double b = rig.At(2 * Hour, "volume of compartment B");
        double c = rig.At(2 * Hour, "volume of compartment C");
        Assert.InRange(b - c, 0.1 * Litre, 100 * Litre);
        Assert.True(b < 1400 * Litre, $"B holds {b}");
        Assert.True(rig.At(20 * Hour, "spilled of compartment C") > 2900 * Litre);
    }

    /// <summary>A bowl of 2 L behind the tripped valve: 4 min at idle, 14 s at full load. 5 % and 1 s: the rail's own content and the dwell.</summary>
    [Theory]
    [InlineData("idle", 240)]
    [InlineData("full", 14.1)]
    public void Trade_6_CutOffTripped_RunsOnWithWhatIsInTheLine(string throttle, double seconds)
    {
        using Rig rig = new(Rig.Compile(CutOffMachine.Text), "standing");
        rig.Do(0, "throttle", throttle);
        rig.Do(0, "button", "pushed");
        rig.World.RunTo(SimTime.FromSeconds(600));
        JournalEntry stop = Assert.Single(rig.World.Journal!, j => j.Text == "Engine stops for want of fuel.");
        Assert.Contains(rig.World.Journal!, j => j.Text == "Cut-off falls shut.");
        Assert.Equal(seconds, stop.Time.Seconds, (0.05 * seconds) + 1);
        Assert.True(rig.At(600, "volume of tank") > 900 * Litre);
    }

    /// <summary>A glass at each end of a floor of 2.4 m on 3°: they differ by ±63 mm. 1 mm: what the glasses are read to.</summary>
    [Fact]
    public void Trade_7_GlassesOnASlope_MeanOfBothEndsIsExact()
    {
        using Rig rig = new(Rig.Compile(SlopeMachine.Text), "deep");
        double front = rig.Reads(1, "front glass");
        double rear = rig.Reads(1, "rear glass");
        Assert.Equal(0.0629, rear - 0.5, 0.001);
        Assert.Equal(-0.0629, front - 0.5, 0.001);
        Assert.Equal(0.5, (front + rear) / 2, 0.00101);
    }

    /// <summary>A1-11 on the same floor: 0.12 m³ leave a wedge of 0.11215 m at the low end, and the mean of the glasses is no longer the depth of 0.05 m.</summary>
    [Fact]
    public void Trade_7_FloorUncovered_MeanIsWrong()
    {
        using Rig rig = new(Rig.Compile(SlopeMachine.Text), "shallow");
        double front = rig.Reads(1, "front glass");
        double rear = rig.Reads(1, "rear glass");
        Assert.Equal(0.1122, rear, 0.001);
        Assert.Equal(0, front);
        Assert.True(Math.Abs(((front + rear) / 2) - 0.05) > 0.005);
    }

    private static string Leaking(string diameter) => $$"""
          leaking:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of compartment A: 200 L, volume of compartment B: 1000 L, volume of compartment C: 1600 L }
            faults: [ { fault: leak, on: [compartment C], after: 0 min, chance: 100 %, diameter: {{diameter}}, height: 300 mm } ]

        """;

    private static CardRun Work(Rig rig, string title)
    {
        CardRun run = Rig.RunOf(rig.Plan, title);
        rig.World.Begin(run);
        rig.World.RunTo(SimTime.Never);
        return run;
    }
}
