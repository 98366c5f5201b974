using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;
using Xunit;

namespace Sightglass.Trials.Tests;

/// <summary>The demo's cards against the demo's situations. All of it is invented: these guard the demo, not the world outside.</summary>
public sealed class CurlewCardTests
{
    private const int Cases = 64;

    /// <summary>Of a train, which has more to work out.</summary>
    private const int TrainCases = 16;

    private static TrialResult Try(string cardFile, string situation, string? roadNumber, int cases = Cases)
    {
        ClassBook book = Books.Curlew.Book;
        DiagnosticList found = [];
        SourceText text = book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile);
        ClassBook spoken = book.For(text);
        Card? card = CardReader.Read(text, spoken, found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        CardLint.Check(card, spoken, found);
        Assert.Empty(found);
        TrialSetup? setup = TrialPreparation.Prepare(Books.CurlewFleet, card, book.Situations[situation], found, roadNumber);
        Assert.True(setup is not null, string.Join('\n', found));
        SweepOptions options = new() { Cases = cases, Threads = 2 };
        return new(setup, options, [.. CaseSweep.Run(setup, options)]);
    }

    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment", null)]
    [InlineData("empty-a-leaking-compartment", "leaking compartment", "4107")]
    [InlineData("empty-a-leaking-compartment", "leaking compartment", "4112")]
    [InlineData("fuel-the-machine", "fuelling", null)]
    [InlineData("prime-a-starved-engine", "starving engine", null)]
    [InlineData("drain-water", "water in the fuel", null)]
    [InlineData("true-quantity", "gauges disagree", null)]
    [InlineData("true-quantity", "gauges disagree", "4104")]
    [InlineData("reset-the-cut-off", "cut-off tripped", null)]
    [InlineData("before-a-steep-grade", "before the grade", null)]
    [InlineData("leak-with-the-engine-stopped", "leak with the engine stopped", null)]
    [InlineData("main-reservoir-leakage-test", "main reservoir may leak", null)]
    [InlineData("brake-pipe-leakage-test", "brake pipe may leak", null)]
    [InlineData("cut-out-a-dragging-truck", "dragging brake", null)]
    [InlineData("release-the-parking-brake-by-hand", "parking brake does not release", null)]
    [InlineData("drain-in-frost", "frozen drains", null)]
    [InlineData("by-pass-the-dryer", "dryer at fault", null)]
    [InlineData("low-main-reservoir", "main reservoir falls", null)]
    [InlineData("set-up-to-trail", "to be towed behind another unit", null)]
    [InlineData("charge-from-nothing", "air from nothing", null)]
    [InlineData("standing-brake-test", "before a standing brake test", null)]
    [InlineData("reset-a-penalty", "penalty application", null)]
    [InlineData("prove-the-check-valve", "check valve may pass", null)]
    [InlineData("weigh-before-it-leaves", "before it leaves the shop", null)]
    [InlineData("axle-box-is-warm", "stopped for a warm axle box", null)]
    [InlineData("motors-run-warm", "motors warm at a stop", null)]
    [InlineData("test-the-cab-signals", "cab signals before departure", null)]
    [InlineData("self-load-test", "before a load test", null)]
    [InlineData("work-at-an-engine-that-starts-by-itself", "engine that keeps itself alive", null)]
    [InlineData("drain-before-frost", "before a night of frost", null)]
    [InlineData("dynamic-brake-does-not-answer", "dynamic brake without current", null)]
    [InlineData("cut-out-motors-with-a-ground", "ground that returns", null)]
    [InlineData("lights-before-departure", "before it leaves at dusk", null)]
    public void Card_ItsSituation_EndsWellOrSafelyAndMostlyWell(string card, string situation, string? roadNumber)
    {
        TrialResult result = Try(card, situation, roadNumber);
        Assert.Equal(Cases, result.Applicable);
        Assert.True(result.Passes, string.Join('\n', result.Groups.Select(g => $"{g.Cases.Length} of {g.Mechanism} at step {g.Step}, such as case {g.Cases[0]}")));
        Assert.True(result.Done > Cases / 2, $"{result.Done} done, {result.Stopped} stopped");
    }

    [Theory]
    [InlineData("couple-the-air-of-a-train", "engine change")]
    [InlineData("uncouple-the-air-of-a-train", "to be left at the platform")]
    [InlineData("part-the-couplers", "machine about to leave its train")]
    [InlineData("brake-test-before-departure", "before departure")]
    [InlineData("brake-test-release", "brakes set before departure")]
    [InlineData("brake-test-of-the-train", "before departure")]
    [InlineData("running-brake-test", "on the way after a brake test")]
    [InlineData("loss-of-brake-pipe", "brake pipe hoses pulled apart")]
    [InlineData("cut-out-a-dragging-car", "dragging car")]
    [InlineData("release-an-overcharged-train", "overcharged train")]
    [InlineData("change-to-the-other-unit", "changing units")]
    [InlineData("haul-dead-in-tow", "dead behind another machine")]
    [InlineData("door-light-stays-dark", "door light that stays dark")]
    [InlineData("no-sand-from-the-second-machine", "second machine without sand")]
    [InlineData("alarm-rings-in-some-unit", "alarm in one of two machines")]
    [InlineData("take-wayside-power", "train to stand on wayside power")]
    [InlineData("change-from-wayside-to-machine", "train on wayside power")]
    [InlineData("one-side-of-head-end-power", "one side of head-end power lost")]
    [InlineData("control-line-breaker-trips", "control line breaker is down")]
    [InlineData("prove-a-coupled-machine", "second machine just coupled")]
    [InlineData("try-the-communication-line", "cars just coupled")]
    public void Card_ItsTrain_EndsWellOrSafelyAndMostlyWell(string card, string situation)
    {
        TrialResult result = Try(card, situation, null, TrainCases);
        Assert.True(result.Passes, string.Join('\n', result.Groups.Select(g => $"{g.Cases.Length} of {g.Mechanism} at step {g.Step}, such as case {g.Cases[0]}")));
        Assert.True(result.Done >= TrainCases / 2, $"{result.Done} done, {result.Stopped} stopped");
    }

    /// <summary>Modification M-15 raised the pickups but not the marks on the glasses: the draft waits for a level that is no longer there.</summary>
    [Fact]
    public void DraftOfTheLeakCard_RaisedPickups_StarvesTheEngine()
    {
        TrialResult all = Try("empty-a-leaking-compartment-draft", "leaking compartment", null);
        NumberResult raised = all.ByNumber.Single(n => n.Number == "4112");
        Assert.True(raised.Failed > raised.Applicable / 2, $"{raised.Failed} of {raised.Applicable}");
        Assert.Equal(all.Failed, raised.Failed);
        Assert.All(all.Groups, g => Assert.Equal(("engine starves", "4112"), (g.Mechanism, g.Numbers.Single())));
        Assert.Equal("road number", all.Ranking[0].Range.Name);
    }

    /// <summary>One box far above the others: whoever walks from whichever end, the machine stays.</summary>
    [Fact]
    public void AxleBoxIsWarm_BearingHasFailed_StopsAtOnce()
    {
        TrialResult all = Try("axle-box-is-warm", "stopped for an axle box that smells", null, TrainCases);
        Assert.All(all.Outcomes, o => Assert.Equal((OutcomeKind.Stopped, "a box is hot, we keep standing still"), (o.Kind, o.Mechanism)));
    }

    /// <summary>Half of the pipes that leak lose too much: the test tells at which car, and lets no train leave.</summary>
    [Fact]
    public void LeakageTestOfTheTrain_LargeLeak_SaysWhichCar()
    {
        TrialResult all = Try("train-brake-pipe-leakage-test", "brake pipe of a train with a leak", null, TrainCases);
        Assert.True(all.Passes);
        int car = all.Setup.Ranges.First(r => r.Name == "leak, on").Order;
        foreach ((int i, Outcome outcome) in all.Outcomes.Index().Where(o => o.Item.Kind == OutcomeKind.Stopped))
        {
            Assert.Equal($"car {1 + (int)all.Setup.Ranges.First(r => r.Order == car).Value(all.DrawsOf(i))} leaks, no train leaves", outcome.Mechanism);
        }

        Assert.InRange(all.Stopped, 1, TrainCases - 1);
    }

    /// <summary>It looks at the last car only: a truck cut out on the way passes.</summary>
    [Fact]
    public void DraftOfTheBrakeTest_TruckCutOutOnTheWay_Passes()
    {
        TrialResult all = Try("brake-test-before-departure-draft", "before departure", null, 2 * TrainCases);
        Assert.InRange(all.Failed, 1, TrainCases);
        Assert.All(all.Groups, g => Assert.Equal("the result is not there at the end", g.Mechanism));
    }

    /// <summary>Cut out, nothing makes a leak of the brake pipe good: the draft waits while a large one empties it.</summary>
    [Fact]
    public void DraftOfTheBrakePipeTest_LargeLeak_EmptiesThePipe()
    {
        TrialResult all = Try("brake-pipe-leakage-test-draft", "brake pipe may leak", null);
        Assert.InRange(all.Failed, 1, Cases / 4);
        Assert.All(all.Groups, g => Assert.Equal("brake pipe is empty", g.Mechanism));
    }
}
