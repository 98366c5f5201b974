using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World;
using Sightglass.World.Journal;
using Sightglass.World.Situations;

namespace Sightglass.Training.Tests.Drills;

public sealed class DrillTests
{
    private const string Headlight = "a headlight is dark";

    private static readonly ClassBook s_book = Books.Curlew.Book;

    public static TheoryData<string> Names => [.. s_book.Drills.Keys];

    [Fact]
    public void Drills_OfTheDemo_AreForEverybodyAndOverAllSystems()
    {
        Assert.True(s_book.Drills.Count >= 24);
        Assert.Equal([DrillLevel.FirstDay, DrillLevel.Working, DrillLevel.Qualifying], s_book.Drills.Values.Select(d => d.Level).Distinct().Order());
        Assert.Equal(["conductor", "engineer", "mechanical"], s_book.Drills.Values.Select(d => d.Role).Distinct().Order(StringComparer.Ordinal));
        Assert.All(s_book.Drills.Values, d => Assert.True(d.StopWord.Length > 0 && d.Level != DrillLevel.Qualifying || d.IsQualifying));
    }

    /// <summary>Issue: a drill is accepted only if a card solves it and doing nothing does not. Three variants of each here; <c>drill --check</c> runs as many as one likes.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Check_EachOfTheDemo_IsSolvedAndNotByNobody(string name)
    {
        DiagnosticList found = [];
        DrillVariants variants = new(Books.CurlewFleet, s_book.Drills[name]);
        BoundDrill bound = variants.For(new(7, 0), found)!;
        ImmutableArray<Card>? cards = DrillCards.Of(bound, found);
        Assert.Empty(found.Where(d => d.Severity == Severity.Error));
        DrillCheckResult result = DrillCheck.Run(variants, cards!.Value, 7, 3, found, shortcuts: false);
        Assert.Empty(result.Unsolved);
        Assert.Empty(result.Idle);
        Assert.True(result.IsGood);
    }

    [Fact]
    public void Check_StepsLeftOut_TellsThoseThatAreNotMissed()
    {
        DiagnosticList found = [];
        DrillVariants variants = new(Books.CurlewFleet, s_book.Drills["a car drags"]);
        DrillCheckResult result = DrillCheck.Run(variants, DrillCards.Of(variants.For(new(1, 0), found)!, found)!.Value, 1, 2, found);
        Assert.NotEmpty(result.Shortcuts); // a step that only tells somebody something is no part of what is judged here
        Assert.DoesNotContain(result.Shortcuts, s => s.Text.Contains("cutout cock", StringComparison.Ordinal) && s.Text.Contains("closed", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_Twice_SameHashAndSameSheet()
    {
        (DrillResult one, DrillResult two) = (Solved("a wheel smells", 2), Solved("a wheel smells", 2));
        Assert.Equal(one.Hash, two.Hash);
        Assert.Equal(Text(one.Sheet), Text(two.Sheet));
        Assert.NotEqual(one.Hash, Solved("a wheel smells", 3).Hash);
    }

    /// <summary>Whoever follows a world changes nothing in it: the same actions without a drill end in the same hash.</summary>
    [Fact]
    public void Run_WithAndWithoutADrill_SameHash()
    {
        BoundDrill drill = Bind(Headlight);
        (WorldAction Act, double At)[] acts = [(new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60)];
        Assert.Equal(Ended(drill, follow: true, acts), Ended(drill, follow: false, acts));
    }

    [Fact]
    public void Work_ByHand_IsPassed()
    {
        EvaluationSheet sheet = Work(
            Headlight,
            Bright(),
            (new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60),
            (new WorldAction.Report(0, "it is lit"), 80), (new WorldAction.Tell(0, "mechanical desk", "the headlight is lit"), 90), (new WorldAction.Declare(0), 100));
        Assert.True(sheet.IsPassed, Text(sheet));
        Assert.Equal(sheet.MostPoints, sheet.Points);
    }

    [Fact]
    public void Work_WrongReport_IsNotPassed()
    {
        EvaluationSheet sheet = Work(
            Headlight,
            Bright(),
            (new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60),
            (new WorldAction.Report(0, "there is a short behind the breaker"), 80), (new WorldAction.Declare(0), 100));
        Assert.False(sheet.IsPassed);
        Assert.Contains("It was not so", Assert.Single(sheet.Failures).Shown, StringComparison.Ordinal);
    }

    /// <summary>The right report does instead of a light that cannot be had.</summary>
    [Fact]
    public void Work_LampBurntOut_RightReportDoesInstead()
    {
        BoundDrill drill = Bind(Headlight);
        ulong dark = Enumerable.Range(0, 60).Select(i => (ulong)i).First(i => Faults(drill, i) is ["burnt out"]);
        EvaluationSheet sheet = Work(
            Headlight,
            dark,
            (new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60),
            (new WorldAction.Report(0, "a lamp or a contact is at fault"), 80), (new WorldAction.Tell(0, "mechanical desk", "a lamp"), 90), (new WorldAction.Declare(0), 100));
        Assert.True(sheet.IsPassed, Text(sheet));
        Assert.Contains(sheet.Lines, l => l.Shown.Contains("could not be brought about", StringComparison.Ordinal));
    }

    /// <summary>It works, it is lit, and it is not passed: who may not touch it has touched it.</summary>
    [Fact]
    public void Work_ActThatIsNotTheirs_WorksAndFails()
    {
        Drill asked = s_book.Drills[Headlight];
        EvaluationSheet allowed = Work(Headlight, Bright(), (new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60), (new WorldAction.Report(0, "it is lit"), 80), (new WorldAction.Declare(0), 100));
        Assert.True(allowed.IsPassed, Text(allowed));
        Situation situation = s_book.Situations[asked.Situation];
        string stranger = situation.People.Select(p => p.Role).Append("instructor").First(r => !s_book.Items["headlight breaker"].Authority!.Who.Contains(r));
        ClassBook book = s_book with { Situations = s_book.Situations.SetItem(situation.Name, situation with { People = [situation.People[0] with { Role = stranger }, .. situation.People[1..]] }) };
        DiagnosticList found = [];
        Fleet fleet = Fleet.Compile(book, found)!;
        BoundDrill drill = DrillBinder.Bind(fleet, asked with { Role = stranger }, found)!;
        EvaluationSheet sheet = Work(drill, Bright(), (new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60), (new WorldAction.Report(0, "it is lit"), 80), (new WorldAction.Declare(0), 100));
        Assert.False(sheet.IsPassed);
        EvaluationLine failed = Assert.Single(sheet.Failures);
        Assert.Equal(EvaluationLayer.Authority, failed.Layer);
        Assert.Contains("That it worked does not count", failed.Shown, StringComparison.Ordinal);
        Assert.True(sheet.Lines.Single(l => l.Said == "The front headlight is lit").IsMet);
    }

    [Fact]
    public void Work_NobodyEver_EndsAtTheTimeLimit()
    {
        EvaluationSheet sheet = Work(Headlight, Bright());
        Assert.Equal(s_book.Drills[Headlight].TimeLimit, sheet.EndedAt!.Value.Seconds);
        Assert.False(sheet.IsPassed);
    }

    /// <summary>What happens on the way: by time, by state, at a place, by a hand.</summary>
    [Fact]
    public void Events_EachSort_HappensAtItsMoment()
    {
        Drill drill = s_book.Drills[Headlight] with
        {
            Events =
            [
                new(Span.None) { After = 30, Says = "by time", By = "conductor" },
                new(Span.None) { When = new("the front headlight is lit", Span.None), After = 5, Says = "by state", By = "conductor" },
                new(Span.None) { At = Where("headlight breaker"), Says = "at a place", By = "conductor" },
                new(Span.None) { Operated = "headlight breaker", After = 40, Sets = "headlight breaker", To = "off" },
            ],
        };
        DiagnosticList found = [];
        BoundDrill bound = DrillBinder.Bind(Books.CurlewFleet, drill, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        List<(string Says, double At)> said = [];
        DrillOutcome outcome = Outcome(bound, Bright(), (s, at) => said.Add((s[(s.LastIndexOf(": ", StringComparison.Ordinal) + 2)..], at)), (new WorldAction.Walk(0, Where("headlight breaker")), 1), (new WorldAction.Operate(0, "headlight breaker", "on"), 60));
        Assert.Equal(["at a place", "by time", "by state"], said.OrderBy(s => s.At).Select(s => s.Says));
        Assert.Equal(30, said.Single(s => s.Says == "by time").At, 6);
        double lit = outcome.Notes.First(n => n.Kind == DrillNoteKind.Reached).At.Seconds;
        Assert.Equal(lit + 5, said.Single(s => s.Says == "by state").At, 6);
        Assert.Equal(100, outcome.Notes.First(n => n.Kind == DrillNoteKind.Lost).At.Seconds, 3); // touched at 60 s
    }

    [Theory]
    [InlineData("W020", "there is no situation `dark hedlight`")]
    [InlineData("W021", "is `desk`")]
    [InlineData("W022", "can be passed")]
    [InlineData("W023", "`headlight is drak` tells nothing")]
    [InlineData("W024", "there is no place `cabb`; did you mean `cab`?")]
    [InlineData("W025", "`headlight braker` cannot be set; did you mean `headlight breaker`?")]
    [InlineData("W026", "has no position `onn`")]
    [InlineData("W027", "there is no item `headlight, frnt`")]
    [InlineData("W028", "has no fault `burnt`")]
    [InlineData("W029", "takes no `how much`")]
    [InlineData("W030", "is for mechanical")]
    [InlineData("W031", "tells `it is litt`")]
    [InlineData("F007", "unknown name `the front headlight is lid`")]
    public void Bind_WhatDoesNotFit_SaysWhatWouldBeRight(string code, string says)
    {
        Drill good = s_book.Drills[Headlight];
        DrillEvent fault = new(Span.None) { Fault = "shorted", On = "headlight, front" };
        Drill wrong = code switch
        {
            "W020" => good with { Situation = "dark hedlight" },
            "W021" => good with { Role = "desk" },
            "W022" => good with { SolvedBy = [] },
            "W023" => good with { KnownFrom = ["headlight is drak"] },
            "W024" => good with { Events = [new(Span.None) { At = "cabb", Says = "x" }] },
            "W025" => good with { Events = [new(Span.None) { Sets = "headlight braker", To = "on" }] },
            "W026" => good with { Events = [new(Span.None) { Sets = "headlight breaker", To = "onn" }] },
            "W027" => good with { Events = [fault with { On = "headlight, frnt" }] },
            "W028" => good with { Events = [fault with { Fault = "burnt" }] },
            "W029" => good with { Events = [fault with { Values = [("how much", new("1 Ohm", Span.None))] }] },
            "W030" => good with { SolvedBy = ["start-the-engine"], Reports = [] },
            "W031" => good with { Reports = [good.Reports[0] with { ToldAs = ["it is litt"] }] },
            _ => good with { Objectives = [good.Objectives[0] with { Is = new("the front headlight is lid", new SourceText("drills.yaml", "the front headlight is lid").Between(0, 26)) }] },
        };
        DiagnosticList found = [];
        BoundDrill? bound = DrillBinder.Bind(Books.CurlewFleet, wrong, found);
        if (bound is not null)
        {
            Assert.Null(DrillCards.Of(bound, found));
        }

        Diagnostic first = found.First(d => d.Severity == Severity.Error);
        Assert.Equal(code, first.Code);
        Assert.Contains(says, first.ToString(), StringComparison.Ordinal);
    }

    /// <summary>A case in which nothing but the breaker is wrong.</summary>
    private static ulong Bright()
    {
        BoundDrill drill = Bind(Headlight);
        return Enumerable.Range(0, 60).Select(i => (ulong)i).First(i => Faults(drill, i).Length == 0);
    }

    private static string Where(string item) => s_book.Items[item].Places[0];

    private static string[] Faults(BoundDrill drill, ulong number)
    {
        DrillResult idle = DrillTrial.Run(drill, new(1, number), [], tell: true);
        return [.. idle.Journal.Select(j => j.Text).Where(t => t.StartsWith("Truth: ", StringComparison.Ordinal)).Select(t => t[(t.LastIndexOf(", ", StringComparison.Ordinal) + 2)..^1])];
    }

    private static BoundDrill Bind(string name)
    {
        DiagnosticList found = [];
        return DrillBinder.Bind(Books.CurlewFleet, s_book.Drills[name], found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static DrillResult Solved(string name, ulong number)
    {
        DiagnosticList found = [];
        DrillVariants variants = new(Books.CurlewFleet, s_book.Drills[name]);
        CaseDraws draws = new(1, number);
        BoundDrill bound = variants.For(draws, found)!;
        return DrillTrial.Run(bound, draws, Trials.TrialPreparation.Choices(bound.Plan, DrillCards.Of(bound, found)!.Value[0], found));
    }

    private static EvaluationSheet Work(string drill, ulong number, params (WorldAction Act, double At)[] acts) => Work(Bind(drill), number, acts);

    private static EvaluationSheet Work(BoundDrill drill, ulong number, params (WorldAction Act, double At)[] acts) =>
        Evaluator.Evaluate(drill, Outcome(drill, number, null, acts));

    private static DrillOutcome Outcome(BoundDrill drill, ulong number, Action<string, double>? said, params (WorldAction Act, double At)[] acts)
    {
        using LaneBank bank = new(drill.Plan);
        World.World world = Begin(bank, drill, number, acts);
        world.Journal = [];
        DrillRun run = new(drill);
        world.Follow(run);
        world.RunTo(SimTime.FromSeconds(drill.Drill.TimeLimit + 1));
        foreach (JournalEntry entry in world.Journal.Where(e => e.Kind == JournalKind.Said))
        {
            said?.Invoke(entry.Text, entry.Time.Seconds);
        }

        return run.Outcome;
    }

    private static ulong Ended(BoundDrill drill, bool follow, (WorldAction Act, double At)[] acts)
    {
        using LaneBank bank = new(drill.Plan);
        World.World world = Begin(bank, drill, 1, acts);
        if (follow)
        {
            world.Follow(new DrillRun(drill));
        }

        world.RunTo(SimTime.FromSeconds(300));
        world.CutHere();
        return world.Hash;
    }

    private static World.World Begin(LaneBank bank, BoundDrill drill, ulong number, (WorldAction Act, double At)[] acts)
    {
        World.World world = new(bank, 0) { Journal = [] };
        SituationStart.Bind(drill.Plan, drill.Situation, [])!.Apply(world, 1, number);
        foreach ((WorldAction act, double at) in acts)
        {
            world.Do(act, SimTime.FromSeconds(at));
        }

        return world;
    }

    private static string Text(EvaluationSheet sheet) => string.Join('\n', sheet.Lines.Select(l => $"{l.IsMet} {l.Said}: {l.Shown}"));
}
