using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>On air as on fuel: a card knows what is shown, never what is true (the design's third idea; common practice, no source).</summary>
public sealed class AirTwinTests
{
    private const string Cab = "Set and let go by the gauge in the cab";
    private const string Ground = "Set and look at the last car";
    private const string ByGauge = "Let the air down by the gauge";
    private const string ByLamp = "Let the air down by the lamp";

    private static readonly string[] s_cards =
    [
        $"""
        Card: {Cab}
        For: hand
        Done when: brakes of every car are released.

        1. Go to the cab.
        2. Turn the brake handle to full service.
        3. Wait until the gauge shows at most 86 psi, at most 1 min. If not, stop.
        4. Wait 1 min.
        5. Turn the brake handle to release.
        6. Wait until the gauge shows at least 109 psi, at most 10 min. If not, stop.
        7. Wait 5 min.
        """,
        $"""
        Card: {Ground}
        For: hand
        Done when: brakes of every car are applied.

        1. Go to the cab.
        2. Turn the brake handle to full service.
        3. Go to the front, right of car 6.
        4. Check that the indicator of car 6 is lit. If not, stop: car 6 does not brake.
        """,
        LetDown(ByGauge, "the main reservoir gauge shows at most 112 psi"),
        LetDown(ByLamp, "the low air lamp is lit"),
    ];

    private static readonly Lazy<Plan> s_plan = new(Read);

    /// <summary>
    /// The valve of the last car is stuck in one of two situations. Whoever sits in the cab has the gauge of the brake pipe alone and does the same at the same moments
    /// until it differs, which it does once the brakes are let go: a reservoir that gave nothing takes nothing.
    /// </summary>
    [Fact]
    public void Card_EqualDisplaysDifferentTruth_SameDeedsUntilADisplayDiffers()
    {
        (JournalEntry[] deeds, JournalEntry[] deedsToo, SimTime differs) = Compare(Cab, Shown("gauge"));
        Assert.Equal(deeds.Select(j => j.Text), deedsToo.Select(j => j.Text));
        Assert.All(deeds.Zip(deedsToo), p => Assert.Equal(p.First.Time.Seconds, p.Second.Time.Seconds, 0.05));
        Assert.True(deeds.Length >= 4, "too little was done before");
        Assert.InRange(differs.Seconds, 60, 600);
        Assert.Equal(OutcomeKind.Done, Worked("nothing wrong", Cab).Run!.Ended);
    }

    /// <summary>Whoever walks to the last car sees its lamp, and what they do differs.</summary>
    [Fact]
    public void Card_DisplaysDiffer_DeedsDiffer()
    {
        Assert.Equal((OutcomeKind.Done, ""), End(Worked("nothing wrong", Ground)));
        Assert.Equal((OutcomeKind.Stopped, "car 6 does not brake"), End(Worked("last valve stuck", Ground)));
        (JournalEntry[] deeds, JournalEntry[] deedsToo) = (Deeds(Worked("nothing wrong", Ground), SimTime.Never), Deeds(Worked("last valve stuck", Ground), SimTime.Never));
        int same = deeds.Zip(deedsToo).TakeWhile(p => p.First.Text == p.Second.Text).Count();
        Assert.Equal(deeds.Length - 1, same); // all but the look at the lamp
    }

    /// <summary>
    /// With the compressor off each application takes air. A gauge of the main reservoir that hangs is believed until the brakes have none left; a lamp that is lit by
    /// another instrument tells in time (common practice, no source).
    /// </summary>
    [Theory]
    [InlineData(ByGauge, "nothing wrong", OutcomeKind.Done, "")]
    [InlineData(ByLamp, "nothing wrong", OutcomeKind.Done, "")]
    [InlineData(ByGauge, "gauge stuck", OutcomeKind.Failed, "brake air is low")]
    [InlineData(ByLamp, "gauge stuck", OutcomeKind.Done, "")]
    public void Card_GaugeStuck_TrustingTheGaugeFailsAndUsingTheLampPasses(string card, string situation, OutcomeKind kind, string mechanism) =>
        Assert.Equal((kind, mechanism), End(Worked(situation, card)));

    private static string LetDown(string title, string until) => $"""
        Card: {title}
        For: hand
        Must never: brake air is low.
        Done when: not brake air is low.

        1. Go to the cab.
        2. Turn the brake handle to full service.
        3. Wait 40 s.
        4. Turn the brake handle to release.
        5. Wait 2 min.
        6. Repeat steps 2 to 5 until {until}, at most 40 times, every 1 min. If not, stop: it holds.
        """;

    private static Plan Read()
    {
        string text = TrainMachine.Text
            .Replace("loaded by: governor }", "loaded by: governor, driven by: engine switch }", StringComparison.Ordinal)
            .Replace(
                "  gauge: {",
                """
                  engine switch: { kind: switch, usual: on, who: [hand], places: [cab] }
                  main reservoir gauge: { kind: gauge, shows: pressure of main reservoir, scale: 0 psi .. 160 psi, resolution: 1 psi, places: [cab] }
                  low air lamp: { kind: lamp, lit when: pressure of main reservoir < 112 psi, places: [cab] }
                  gauge: {
                """,
                StringComparison.Ordinal)
            .Replace("ends:\n  rear: { faces: rear, joins: { brake pipe: rear brake pipe hose, main", "facts:\n  brake air is low: { is: pressure of main reservoir < 95 psi }\nends:\n  rear: { faces: rear, joins: { brake pipe: rear brake pipe hose, main", StringComparison.Ordinal)
            + "\n" + Situation("nothing wrong", "") + Situation("last valve stuck", "{ fault: stuck, on: [control valve of car 6], after: 0 s, chance: 100 % }")
            + Situation("gauge stuck", "{ fault: stuck, on: [main reservoir gauge], after: 30 s, chance: 100 % }");
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", text)], [.. s_cards.Select((c, i) => new SourceText($"{i}.card", c))], KindLibrary.Catalog, found);
        Assert.True(book is not null && !found.HasErrors, string.Join('\n', found));
        Plan? plan = PlanCompiler.Compile(book.Coupled("six coaches"), found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }

    private static string Situation(string name, string fault) => $$"""
          {{name}}:
            train: six coaches
            people: [ { role: hand, at: [cab] } ]
            start: { front angle cock of car 6: closed, front main reservoir cock of car 6: closed, engine switch: off }
            faults: [ {{fault}} ]

        """;

    private static (JournalEntry[] Deeds, JournalEntry[] DeedsToo, SimTime Differs) Compare(string card, Func<World, double> display)
    {
        List<double> shown = [];
        List<double> shownToo = [];
        World one = Worked("nothing wrong", card, display, shown);
        World other = Worked("last valve stuck", card, display, shownToo);
        SimTime differs = SimTime.FromSeconds(shown.Zip(shownToo).TakeWhile(p => p.First == p.Second).Count());
        return (Deeds(one, differs), Deeds(other, differs), differs);
    }

    private static Func<World, double> Shown(string item) => w => w.Read(w.Plan.Book.Items[item])!.Value;

    private static World Worked(string situation, string card, Func<World, double>? display = null, List<double>? shown = null)
    {
        using Rig rig = new(s_plan.Value, situation);
        long second = 0;
        rig.World.OnSample = w =>
        {
            shown?.Add(display!(w));
            w.SampleAt(SimTime.FromSeconds(++second));
        };
        rig.World.SampleAt(shown is null ? SimTime.Never : SimTime.Zero);
        rig.World.Begin(Rig.RunOf(s_plan.Value, card));
        rig.World.RunTo(SimTime.Never);
        return rig.World;
    }

    private static (OutcomeKind Kind, string Mechanism) End(World world) => (world.Run!.Ended, world.Run.Mechanism);

    private static JournalEntry[] Deeds(World world, SimTime until) =>
        [.. world.Journal!.Where(j => j.Time < until && j.Kind is (JournalKind.Deed or JournalKind.Said or JournalKind.Finding))];
}
