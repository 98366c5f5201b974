using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.World;
using Sightglass.World.People;

namespace Sightglass.Training.Tests.Debrief;

public sealed class WhatIfTests
{
    /// <summary>The same acts written down again earn the same lines.</summary>
    [Fact]
    public void Run_TheSameActsAgain_SameSheet()
    {
        SimTime from = SimTime.FromSeconds(75);
        WhatIfResult result = WhatIf.Run(Worked.Drill, Worked.Passed, new(from, [], [new(5, new WorldAction.Report(0, "it is lit")), new(1, new WorldAction.Tell(0, "mechanical desk", "the headlight is lit")), new(1, new WorldAction.Declare(0))]));
        Assert.Null(result.Refused);
        Assert.Equal(from, result.Parts);
        Assert.True(result.Film.Result.IsPassed);
        Assert.All(result.Beside(Worked.Film.Result.Sheet), p => Assert.Equal(p.Before!.IsMet, p.Now!.IsMet));
        Same(result, from);
    }

    [Fact]
    public void Run_NothingMoreIsDone_IsNotPassedAndEndsAtTheTimeLimit()
    {
        SimTime from = SimTime.FromSeconds(40);
        WhatIfResult result = WhatIf.Run(Worked.Drill, Worked.Passed, new(from, [], []));
        Assert.False(result.Film.Result.IsPassed);
        Assert.Equal(Worked.Drill.Drill.TimeLimit, result.Film.Result.Sheet.EndedAt!.Value.Seconds, 3);
        Assert.Contains(result.Beside(Worked.Film.Result.Sheet), p => p.Before?.IsMet == true && p.Now?.IsMet == false);
        Assert.InRange(result.Film.Moments.Length, 100, DebriefFilm.MostMoments);
        Same(result, from);
    }

    /// <summary>From before the wrong report a card that solves the drill still passes it.</summary>
    [Fact]
    public void Run_ByACardThatSolvesIt_Passes()
    {
        WhatIfCard card = WhatIfCard.Of(Worked.Drill)[0];
        Assert.True(card.Solves);
        WhatIfResult result = WhatIf.Run(Worked.Drill, Worked.Failed, new(SimTime.FromSeconds(2), card.Programs, []));
        Assert.True(result.Film.Result.IsPassed, string.Join('\n', result.Film.Result.Sheet.Lines.Select(l => $"{l.IsMet} {l.Said}: {l.Shown}")));
        Assert.True(result.Parts > SimTime.FromSeconds(2)); // they were on the way: they arrive first
        Assert.All(result.Film.Result.Outcome.Notes.Where(n => n.Kind == DrillNoteKind.Touched), n => Assert.True(n.At >= result.Parts));
    }

    [Fact]
    public void Run_AnActThatCannotBeDone_SaysWhichAndWhy()
    {
        WhatIfResult result = WhatIf.Run(Worked.Drill, Worked.Passed, new(SimTime.FromSeconds(40), [], [new(0, new WorldAction.Walk(0, "rear coupler")), new(0, new WorldAction.Operate(0, "headlight breaker", "on"))]));
        Assert.True(result.Refused is (1, Hindrance.OutOfReach) or (0, Hindrance.NoWay), result.Refused.ToString());
    }

    [Fact]
    public void Run_NoLongerWanted_Ends()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => WhatIf.Run(Worked.Drill, Worked.Passed, new(SimTime.FromSeconds(40), [], []), cancel: stop.Token));
    }

    /// <summary>Up to the moment at which it parts everything is as in the record.</summary>
    private static void Same(WhatIfResult result, SimTime from)
    {
        Assert.Equal(Worked.Film.Result.Outcome.Notes.Where(n => n.At <= from), result.Film.Result.Outcome.Notes.Where(n => n.At <= from));
        Assert.Equal(Worked.Film.Result.Journal.Where(j => j.Time <= from).Select(j => (j.Time, j.Text)), result.Film.Result.Journal.Where(j => j.Time <= from).Select(j => (j.Time, j.Text)));
        DebriefMoment there = result.Film.At(from);
        Assert.Equal(DebriefReplay.At(Worked.Drill, Worked.Passed, there.At).Truth, there.Truth);
    }
}
