using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Lessons;

/// <summary>A lesson that somebody edited, on the book as it was and on one that was revised.</summary>
public sealed class LessonEditingTests
{
    private const string Gauge = "cab fuel gauge";

    private static readonly ClassBook s_book = Books.Curlew.Book;
    private static readonly Item s_gauge = s_book.Items[Gauge];

    [Fact]
    public void Plan_SaidOtherwise_SaidAndTimed()
    {
        LessonPlan book = Plan(s_book);
        LessonPlan edited = Plan(s_book, Edit(LessonEditSort.Says, s_gauge.Texts.Know, "It lies."));
        LessonPoint point = PointOf(edited);
        Assert.Contains("It lies.", point.Says);
        Assert.DoesNotContain(s_gauge.Texts.Know, point.Says);
        Assert.Empty(edited.Misfits);
        Assert.True(edited.Seconds < book.Seconds);
    }

    [Fact]
    public void Plan_LeftOutAddedAndPassedBy_AsAsked()
    {
        LessonPlan edited = Plan(
            s_book,
            Edit(LessonEditSort.Says, s_gauge.Purpose, ""),
            Edit(LessonEditSort.Says, "", "Compare it with the panel."),
            Edit(LessonEditSort.Question, s_gauge.Questions[0].Asked, ""),
            Edit(LessonEditSort.Item, "", "", "panel fuel gauge"));
        LessonPoint point = PointOf(edited);
        Assert.DoesNotContain(s_gauge.Purpose, point.Says);
        Assert.Equal("Compare it with the panel.", point.Says[^1]);
        Assert.DoesNotContain(s_gauge.Questions[0], edited.Stops.SelectMany(s => s.Questions));
        Assert.DoesNotContain(edited.Stops.SelectMany(s => s.Points), p => p.Item.Name == "panel fuel gauge");
        Assert.Empty(edited.Misfits);
    }

    /// <summary>The book was revised: its sentence is another one. Nothing is guessed, nothing is lost, and what it may be put on is shown.</summary>
    [Fact]
    public void Plan_BookRevised_EditToldWithWhatStandsThereNow()
    {
        string now = s_gauge.Texts.Know + " Since the last revision it counts the aft compartment too.";
        ClassBook revised = s_book with { Items = s_book.Items.SetItem(Gauge, s_gauge with { Texts = s_gauge.Texts with { Know = now } }) };
        LessonEdit edit = Edit(LessonEditSort.Says, s_gauge.Texts.Know, "It lies.");
        LessonPlan plan = Plan(revised, edit);
        Assert.Contains(now, PointOf(plan).Says);
        EditMisfit misfit = Assert.Single(plan.Misfits);
        Assert.Equal((edit, now), (misfit.Edit, misfit.Now));
        Assert.Contains("other words", misfit.Why, StringComparison.Ordinal);

        edit.Was = misfit.Now!;
        LessonPlan again = Plan(revised, edit);
        Assert.Empty(again.Misfits);
        Assert.Contains("It lies.", PointOf(again).Says);
    }

    [Fact]
    public void Plan_ItemGone_EditsToldWithoutAnythingToPutThemOn()
    {
        ClassBook without = s_book with { Items = s_book.Items.Remove(Gauge) };
        LessonEdit[] edits = [Edit(LessonEditSort.Says, s_gauge.Texts.Know, "It lies."), Edit(LessonEditSort.Says, "", "Compare it."), Edit(LessonEditSort.Item, "", "")];
        LessonPlan plan = LessonPlanner.Plan(without, new(new("gauges", ["panel fuel gauge"]), 10, Depth.Operate) { Edits = [.. edits] })!;
        Assert.Equal(edits, plan.Misfits.Select(m => m.Edit));
        Assert.All(plan.Misfits, m => Assert.Null(m.Now));
    }

    [Fact]
    public void Plan_EveryItemPassedBy_IsStillALesson() =>
        Assert.NotEmpty(Plan(s_book, Edit(LessonEditSort.Item, "", ""), Edit(LessonEditSort.Item, "", "", "panel fuel gauge")).Stops);

    private static LessonPlan Plan(ClassBook book, params ImmutableArray<LessonEdit> edits) => LessonPlanner.Plan(book, new(new("gauges", [Gauge, "panel fuel gauge"]), 10, Depth.Operate) { Edits = edits })!;

    private static LessonPoint PointOf(LessonPlan plan) => plan.Stops.SelectMany(s => s.Points).Single(p => p.Item.Name == Gauge);

    private static LessonEdit Edit(LessonEditSort sort, string was, string becomes, string item = Gauge) => new()
    {
        Id = Guid.CreateVersion7(),
        Lesson = Guid.Empty,
        Sort = sort,
        Item = item,
        Was = was,
        Becomes = becomes,
        By = "an instructor",
        At = DateTimeOffset.UnixEpoch,
    };
}
