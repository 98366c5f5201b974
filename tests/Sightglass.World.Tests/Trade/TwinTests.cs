using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;

namespace Sightglass.World.Tests.Trade;

/// <summary>A card knows what is shown, never what is true (the design's third idea; common practice, no source).</summary>
public sealed class TwinTests
{
    private const string ByGauge = """
        Card: Keep C supplied by the gauge
        For: hand; told: desk

        Use when: the fuel gauge shows at least 10 %.
        Must never: the engine starves; a compartment overflows.
        Done when: the engine runs. Stays so for 10 min.

        1. Tell the desk: I draw on C and watch the gauge.
        2. Go to the cab.
        3. Wait until the fuel gauge shows at most 20 %, at most 3 h. If not, go to step 4.
        4. Go to the panel.
        5. Open the supply valve B.
        6. Close the supply valve C.
        """;

    private const string ByGlass = """
        Card: Keep C supplied by the glass
        For: hand; told: desk

        Use when: the fuel gauge shows at least 10 %.
        Must never: the engine starves; a compartment overflows.
        Done when: the engine runs. Stays so for 10 min.

        1. Tell the desk: I draw on C and watch its glass.
        2. Go to the panel.
        3. Wait until the sight glass C shows low, at most 3 h. If not, go to step 4.
        4. Open the supply valve B.
        5. Close the supply valve C.
        """;

    private const string Situations = """
          C holds more:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of compartment A: 200 L, volume of compartment B: 350 L, volume of compartment C: 950 L, return valve A: open }
          B holds more:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of compartment A: 200 L, volume of compartment B: 750 L, volume of compartment C: 550 L, return valve A: open }
          gauge stuck:
            people: [ { role: hand, at: [panel] } ]
            start: { volume of compartment A: 200 L, volume of compartment B: 350 L, volume of compartment C: 950 L, return valve A: open }
            faults: [ { fault: stuck, on: [fuel gauge], after: 1 min, chance: 100 % } ]
        """;

    private static readonly Plan s_plan = TradeMachine.Plan(Situations, ByGauge, ByGlass);

    /// <summary>
    /// The gauge shows B and C together, and the two hold 1,300 L in both situations. The person in the cab sees the gauge alone and does the same at the
    /// same moments, though in one of them C runs dry; what differs begins when a display within his reach differs. 50 ms: the pressure in the lines, which
    /// is not displayed, shifts the moment at which the gauge turns over by some milliseconds.
    /// </summary>
    [Fact]
    public void Card_EqualDisplaysDifferentTruth_SameDeedsUntilADisplayDiffers()
    {
        (JournalEntry[] deeds, SimTime differs) = Compare("Keep C supplied by the gauge", "fuel gauge");
        Assert.True(deeds.Length >= 2, "too little was done before");
        Assert.True(differs > SimTime.FromSeconds(1800), "the displays differ too early for this test to say anything");
    }

    /// <summary>Who looks at the glass as well sees the difference at once, and what is done differs.</summary>
    [Fact]
    public void Card_DisplaysDiffer_DeedsDiffer()
    {
        (_, SimTime differs) = Compare("Keep C supplied by the glass", "sight glass C");
        Assert.Equal(SimTime.Zero, differs);
        Assert.NotEqual(
            Deeds(Worked("C holds more", "Keep C supplied by the glass"), SimTime.Never).Select(j => j.Time),
            Deeds(Worked("B holds more", "Keep C supplied by the glass"), SimTime.Never).Select(j => j.Time));
    }

    /// <summary>Common practice, no source: a gauge that hangs is believed until the engine stops; a glass cannot hang with it.</summary>
    [Fact]
    public void Card_GaugeStuck_TrustingTheGaugeFailsAndUsingTheGlassPasses()
    {
        CardRun trusting = Worked("gauge stuck", "Keep C supplied by the gauge").Run!;
        Assert.Equal((OutcomeKind.Failed, "engine starves"), (trusting.Ended, trusting.Mechanism));
        Assert.Equal(OutcomeKind.Done, Worked("gauge stuck", "Keep C supplied by the glass").Run!.Ended);
        Assert.Equal(OutcomeKind.Done, Worked("C holds more", "Keep C supplied by the gauge").Run!.Ended);
    }

    /// <summary>Deeds of both situations up to the first second at which what the display shows differs, found equal.</summary>
    private static (JournalEntry[] Deeds, SimTime Differs) Compare(string card, string display)
    {
        List<double> shown = [];
        List<double> shownToo = [];
        World one = Worked("C holds more", card, display, shown);
        World other = Worked("B holds more", card, display, shownToo);
        int same = shown.Zip(shownToo).TakeWhile(p => p.First == p.Second).Count();
        SimTime differs = SimTime.FromSeconds(same);
        JournalEntry[] deeds = Deeds(one, differs);
        JournalEntry[] deedsToo = Deeds(other, differs);
        Assert.Equal(deeds.Select(j => j.Text), deedsToo.Select(j => j.Text));
        Assert.All(deeds.Zip(deedsToo), p => Assert.Equal(p.First.Time.Seconds, p.Second.Time.Seconds, 0.05));
        return (deeds, differs);
    }

    private static World Worked(string situation, string card, string display = "fuel gauge", List<double>? shown = null)
    {
        using Rig rig = new(s_plan, situation);
        long second = 0;
        rig.World.OnSample = w =>
        {
            shown?.Add(w.Read(w.Plan.Book.Items[display])!.Value);
            w.SampleAt(SimTime.FromSeconds(++second));
        };
        rig.World.SampleAt(SimTime.Zero);
        rig.World.Begin(Rig.RunOf(s_plan, card));
        rig.World.RunTo(SimTime.Never);
        return rig.World;
    }

    private static JournalEntry[] Deeds(World world, SimTime until) =>
        [.. world.Journal!.Where(j => j.Time < until && j.Kind is (JournalKind.Deed or JournalKind.Said or JournalKind.Finding))];
}
