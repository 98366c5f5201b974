using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World.People;

namespace Sightglass.Training.Tests.Drills;

/// <summary>
/// The rules of evaluation, one by one, on outcomes written by hand. They are those of marking practice: forbidden acts or states fail at once, then the end state and its time, then those orders that safety
/// needs; prompted is not a pass; judged against what could be known then (writers' guides on performance checks, from memory; common practice).
/// </summary>
public sealed class EvaluatorTests
{
    private static readonly Drill s_drill = Books.Curlew.Book.Drills["a headlight is dark"] with
    {
        Reports = [],
        Objectives = [new("it is lit", Always, Span.None) { Within = 60, Worth = 3 }, new("it stays lit", Always, Span.None) { Stays = 100, IsCritical = false }],
        MustNever = [new("it smokes", Always, "Smoke is fire.", Span.None)],
        Orders = [new("asked before touched", Always, Always, "", Span.None)],
        Hints = [new("Look at the breaker.", 1, Span.None)],
        PassesFrom = 0.7,
    };

    private static FormulaText Always => new("engine runs", Span.None);

    /// <summary>Known at 10 s, lit at 40 s, done at 50 s.</summary>
    private static DrillNote[] Good =>
    [
        Note(0, DrillNoteKind.Cue), Note(10, DrillNoteKind.Known), Note(20, DrillNoteKind.First, 0), Note(30, DrillNoteKind.Then, 0), Note(40, DrillNoteKind.Reached, 0), Note(40, DrillNoteKind.Reached, 1),
        Note(50, DrillNoteKind.Declared),
    ];

    [Fact]
    public void Evaluate_AllAsWanted_IsPassedWithAllPoints()
    {
        EvaluationSheet sheet = Sheet(Good);
        Assert.True(sheet.IsPassed);
        Assert.Equal((4, 4, 2.8), (sheet.Points, sheet.MostPoints, Math.Round(sheet.NeededPoints, 9)));
        Assert.Equal((10, 50), (sheet.KnownAt!.Value.Seconds, sheet.EndedAt!.Value.Seconds));
        Assert.Empty(sheet.Failures);
    }

    [Fact]
    public void Evaluate_UnderWay_IsNotPassedYet() => Assert.False(Sheet(Good[..^1]).IsPassed);

    [Theory]
    [InlineData(70, true)]
    [InlineData(70.5, false)]
    public void Evaluate_TimeLimit_CountsFromWhatCouldBeKnown(double at, bool inTime)
    {
        EvaluationSheet sheet = Sheet([.. Good.Where(n => n.Kind is not (DrillNoteKind.Reached or DrillNoteKind.Declared) || n.Number == 1), Note(at, DrillNoteKind.Reached, 0), Note(90, DrillNoteKind.Declared)]);
        Assert.Equal(inTime, sheet.IsPassed);
        Assert.Contains(inTime ? "in time: wanted by 1:10" : "too late: wanted by 1:10, as it could be known from 0:10 on", Line(sheet, "It is lit").Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_MustNeverBeforeItCouldBeKnown_IsNotTheirs()
    {
        Assert.True(Sheet([Note(5, DrillNoteKind.Never, 0), .. Good]).IsPassed);
        EvaluationSheet later = Sheet([.. Good[..2], Note(15, DrillNoteKind.Never, 0), .. Good[2..]]);
        Assert.False(later.IsPassed);
        EvaluationLine line = Assert.Single(later.Failures);
        Assert.Equal((EvaluationLayer.Forbidden, "Smoke is fire."), (line.Layer, line.Because));
        Assert.Contains("0:05 after it could be known", line.Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_NotThereAtTheEnd_IsNotMet()
    {
        Assert.Contains("never was so", Line(Sheet([.. Good.Where(n => n is not { Kind: DrillNoteKind.Reached, Number: 0 })], lit: false), "It is lit").Shown, StringComparison.Ordinal);
        Assert.Contains("lost again at 0:45", Line(Sheet([.. Good[..^1], Note(45, DrillNoteKind.Lost, 0), Good[^1]], lit: false), "It is lit").Shown, StringComparison.Ordinal);
    }

    /// <summary>Lost after the end was told, and there again when all is over: it did not stay so.</summary>
    [Fact]
    public void Evaluate_LostAfterTheEndWasTold_DidNotStay()
    {
        EvaluationSheet sheet = Sheet([.. Good, Note(60, DrillNoteKind.Lost, 1), Note(70, DrillNoteKind.Reached, 1)]);
        Assert.False(Line(sheet, "It stays lit").IsMet);
        Assert.True(sheet.IsPassed); // it is no critical line, and 3 of 4 points are enough
    }

    [Fact]
    public void Evaluate_TooFewPoints_IsNotPassed() => Assert.False(Evaluator.Evaluate(Bound(s_drill with { PassesFrom = 0.9 }), Outcome([.. Good.Where(n => n is not { Kind: DrillNoteKind.Reached, Number: 1 })], [true, false])).IsPassed);

    [Fact]
    public void Evaluate_OrderTheWrongWayRound_IsNotPassed()
    {
        EvaluationSheet sheet = Sheet([Good[0], Good[1], Note(15, DrillNoteKind.Then, 0), .. Good[2..]]);
        Assert.False(sheet.IsPassed);
        Assert.Equal(EvaluationLayer.Order, Assert.Single(sheet.Failures).Layer);
        EvaluationSheet neither = Sheet([.. Good.Where(n => n.Kind is not (DrillNoteKind.First or DrillNoteKind.Then))]);
        Assert.True(neither.IsPassed);
        Assert.Contains("never came to that", neither.Lines.Single(l => l.Layer == EvaluationLayer.Order).Shown, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Breach.MayNot, "not theirs: light breakers")]
    [InlineData(Breach.NotPermitted, "without the permission that it needs: light breakers")]
    [InlineData(Breach.RemovedByAnother, "what others had set: light breakers")]
    public void Evaluate_ABreach_FailsWhateverCameOfIt(Breach breach, string says)
    {
        EvaluationSheet sheet = Sheet([.. Good[..2], Note(12, DrillNoteKind.Breach, (int)breach, "light breakers"), .. Good[2..]]);
        Assert.False(sheet.IsPassed);
        Assert.Equal(sheet.MostPoints, sheet.Points);
        Assert.Contains(says, Assert.Single(sheet.Failures).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_SomebodyInjured_IsNotPassed() => Assert.False(Sheet([.. Good[..2], Note(12, DrillNoteKind.Injured, 0, "live rails"), .. Good[2..]]).IsPassed);

    [Fact]
    public void Evaluate_ProtectionKept_IsNotPassed()
    {
        EvaluationSheet sheet = Evaluator.Evaluate(Bound(s_drill), Outcome(Good, [true, true]) with { NotGivenBack = ["going between"] });
        Assert.False(sheet.IsPassed);
        Assert.Contains("going between", Assert.Single(sheet.Failures).Said, StringComparison.Ordinal);
    }

    /// <summary>Prompted is not a pass (marking practice); in practice a hint costs what it says.</summary>
    [Fact]
    public void Evaluate_AHint_CostsOrFails()
    {
        DrillNote[] hinted = [.. Good[..2], Note(12, DrillNoteKind.Hint, 0), .. Good[2..]];
        EvaluationSheet practice = Sheet(hinted);
        Assert.True(practice.IsPassed);
        Assert.Equal(3, practice.Points);
        EvaluationSheet counts = Evaluator.Evaluate(Bound(s_drill with { IsQualifying = true }), Outcome(hinted, [true, true]));
        Assert.False(counts.IsPassed);
        Assert.Contains("Prompted is not a pass", Assert.Single(counts.Failures).Shown, StringComparison.Ordinal);
    }

    /// <summary>Who must be told of a control stands in the book.</summary>
    [Fact]
    public void Evaluate_WhoHadToKnow_IsALineForEachRole()
    {
        Item control = Books.Curlew.Book.Items.Values.First(i => i.Authority is { Told.IsEmpty: false } a && !a.Told.Contains(s_drill.Role) && a.Who.Contains(s_drill.Role));
        DrillNote[] touched = [.. Good[..2], Note(12, DrillNoteKind.Touched, -1, control.Name), .. Good[2..]];
        EvaluationSheet silent = Sheet(touched);
        Assert.Equal(control.Authority!.Told.Length, silent.Lines.Count(l => l is { Layer: EvaluationLayer.Told, IsMet: false, IsCritical: false }));
        EvaluationSheet told = Sheet([.. touched[..3], .. control.Authority.Told.Select(r => Note(13, DrillNoteKind.Told, -1, r)), .. touched[3..]]);
        Assert.True(told.Points > silent.Points);
        Assert.True(told.IsPassed);
    }

    [Fact]
    public void Evaluate_ItNeedOnlyHaveBeen_IsMetThoughItIsOver()
    {
        Drill once = s_drill with { Objectives = [s_drill.Objectives[0] with { Once = true }] };
        EvaluationSheet sheet = Evaluator.Evaluate(Bound(once), Outcome([.. Good[..^1], Note(45, DrillNoteKind.Lost, 0), Good[^1]], [false]));
        Assert.True(sheet.IsPassed);
        Assert.Equal("So from 0:40, in time: wanted by 1:10.", Line(sheet, "It is lit").Shown);
    }

    /// <summary>The same outcome gives the same sheet, line by line, in the language that is spoken.</summary>
    [Fact]
    public void Evaluate_Twice_SameSheet() =>
        Assert.Equal(Sheet(Good).Lines.Select(l => (l.Said, l.Shown, l.IsMet, l.Worth)), Sheet(Good).Lines.Select(l => (l.Said, l.Shown, l.IsMet, l.Worth)));

    private static DrillNote Note(double at, DrillNoteKind kind, int number = -1, string what = "") => new(SimTime.FromSeconds(at), kind, number, what, "cab");

    private static EvaluationLine Line(EvaluationSheet sheet, string said) => sheet.Lines.Single(l => l.Said == said);

    private static EvaluationSheet Sheet(DrillNote[] notes, bool lit = true) => Evaluator.Evaluate(Bound(s_drill), Outcome(notes, [lit, true]));

    private static DrillOutcome Outcome(DrillNote[] notes, bool[] held) => new([.. notes], [.. held], true, []);

    private static BoundDrill Bound(Drill drill) => new(drill, Books.Curlew, Books.Curlew.Book.Situations[drill.Situation], 0, null, [], [], [], [], [], []);
}
