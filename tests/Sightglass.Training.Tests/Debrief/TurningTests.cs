using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World;

namespace Sightglass.Training.Tests.Debrief;

public sealed class TurningTests
{
    /// <summary>Settled with what was wanted last, after the hand that brought it about.</summary>
    [Fact]
    public void Of_APass_IsWhereTheLastObjectiveCame()
    {
        Turning turning = Worked.Film.Turning;
        DrillNote reached = Worked.Film.Result.Outcome.Notes.Last(n => n.Kind == DrillNoteKind.Reached);
        Assert.Equal(TurningKind.Settled, turning.Kind);
        Assert.Equal("headlight breaker", turning.Act!.What);
        Assert.StartsWith("Passed: ", Say.With(turning.Headline), StringComparison.Ordinal);
        Assert.True(turning.At >= reached.At);
    }

    [Fact]
    public void Of_AWrongReport_IsTheReport()
    {
        Turning turning = Turning.Of(Worked.Drill, DrillReplay.Run(Worked.Drill, Worked.Failed));
        Assert.Equal(TurningKind.Broken, turning.Kind);
        Assert.InRange(turning.At!.Value.Seconds, 80, 90);
        Assert.Contains("what was reported at 1:", Say.With(turning.Headline), StringComparison.Ordinal);
        Assert.Contains("It decides alone", Say.With(turning.Why), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NothingDone_IsWhatIsMissingWhenItWasSaidToBeDone()
    {
        Turning turning = Turning.Of(Worked.Drill, DrillReplay.Run(Worked.Drill, Worked.Record(20, (new WorldAction.Declare(0), 10))));
        Assert.Equal(TurningKind.Missing, turning.Kind);
        Assert.Equal(10, turning.At!.Value.Seconds, 3);
        Assert.Contains("It was said to be done at 0:10", Say.With(turning.Why), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ARunUnderWay_IsOpen()
    {
        Turning turning = Turning.Of(Worked.Drill, DrillReplay.Run(Worked.Drill, Worked.Record(20)));
        Assert.Equal(TurningKind.Open, turning.Kind);
        Assert.Null(turning.At);
    }

    /// <summary>Of several that were broken the earliest decides; of a must-never its own words are said.</summary>
    [Fact]
    public void Of_SeveralBroken_IsTheEarliest()
    {
        EvaluationLine late = new(EvaluationLayer.Authority, $"Operated what is not theirs: {"x"}", false, true, 0, $"", SimTime.FromSeconds(50));
        EvaluationLine early = new(EvaluationLayer.Order, $"{"first this"}", false, true, 0, $"", SimTime.FromSeconds(20));
        EvaluationSheet sheet = new(1, [late, early], 0, 1, 1, SimTime.Zero, SimTime.FromSeconds(60));
        DrillResult result = new(new([], [], true, []), sheet, null, [], null, 0, 0);
        Turning turning = Turning.Of(Worked.Drill, result);
        Assert.Same(early, turning.Line);
        Assert.Contains("the first of 2 critical lines", Say.With(turning.Why), StringComparison.Ordinal);
        Assert.Contains("first this", Say.With(turning.Headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TooFewPoints_SaysWhereMostWereLost()
    {
        EvaluationLine hint = new(EvaluationLayer.Help, $"A hint: {"look"}", true, false, -2, $"", SimTime.FromSeconds(5));
        EvaluationSheet sheet = new(1, [hint], 1, 3, 2.4, SimTime.Zero, SimTime.FromSeconds(60));
        Turning turning = Turning.Of(Worked.Drill, new(new([], [], true, []), sheet, null, [], null, 0, 0));
        Assert.Equal((TurningKind.Points, 5d), (turning.Kind, turning.At!.Value.Seconds));
        Assert.Equal("Not passed: 1 of 3 points, and 2.4 are needed.", Say.With(turning.Headline));
    }
}
