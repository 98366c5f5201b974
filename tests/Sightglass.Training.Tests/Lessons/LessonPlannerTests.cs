using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Training.Lessons;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Lessons;

/// <summary>Lessons of the demo class; what is asserted can be worked out by hand from the book.</summary>
public sealed class LessonPlannerTests
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    /// <summary>The gauge in the cab: its words at 120 a minute, its questions at 45 s each, and that for every turn of ten people where there is room for three and whoever speaks stays.</summary>
    [Fact]
    public void Seconds_OfOneStop_AsByHand()
    {
        LessonPlan plan = Of(new(new("gauge", ["cab fuel gauge"]), 10, Depth.Know));
        Item gauge = s_book.Items["cab fuel gauge"];
        int words = Words(gauge.Purpose) + Words(gauge.Normal) + Words(gauge.Texts.Know);
        LessonStop stop = Assert.Single(plan.Stops);
        int cautions = stop.Cautions.Sum(c => Words(c.Caution.Text));
        Assert.Equal(5, stop.Turns);
        Assert.Equal(5 * (((words + cautions) / 120.0 * 60) + (45 * gauge.Questions.Length)), stop.Seconds, 1e-9);
        Assert.Equal(480 + stop.Seconds + 300, plan.Seconds, 1e-9);
        LessonStop faster = Assert.Single(Of(new(new("gauge", ["cab fuel gauge"]), 10, Depth.Know) { Times = new() { WordsAMinute = 150 } }).Stops);
        Assert.Equal(5 * (((words + cautions) / 150.0 * 60) + (45 * gauge.Questions.Length)), faster.Seconds, 1e-9);
    }

    [Fact]
    public void Says_EachDepth_WhatThoseBeforeItSayAndMore()
    {
        string[] Says(Depth depth) => [.. Of(new(RouteRequest.OfSystem(s_book, "fuel"), 5, depth)).Stops.SelectMany(s => s.Points).SelectMany(p => p.Says)];
        (string[] know, string[] operate, string[] repair) = (Says(Depth.Know), Says(Depth.Operate), Says(Depth.Repair));
        Assert.Empty(know.Except(operate));
        Assert.Empty(operate.Except(repair));
        Assert.Contains(s_book.Items["cab fuel gauge"].Texts.Operate, operate);
        Assert.DoesNotContain(s_book.Items["cab fuel gauge"].Texts.Operate, know);
        Assert.Contains(s_book.Items["cab fuel gauge"].Texts.Repair, repair);
    }

    /// <summary>Hands try only what the role may operate, nothing whose touch needs protection, and of each kind one.</summary>
    [Fact]
    public void Hands_OnlyWhatTheAudienceMay()
    {
        LessonPlan plan = Of(new(RouteRequest.OfWhole(s_book), 10, Depth.Operate) { Audience = "conductor" });
        LessonPoint[] tried = [.. plan.Stops.SelectMany(s => s.Points).Where(p => p.Hands)];
        Assert.NotEmpty(tried);
        Assert.All(tried, p => Assert.True(p.Item.Authority is not { } a || a.Who.IsEmpty || a.Who.Contains("conductor")));
        Assert.All(tried, p => Assert.DoesNotContain(s_book.Hazards.Values, h => h.OnTouch && h.Items.Contains(p.Item.Name)));
        Assert.Equal(tried.Length, tried.Select(p => p.Item.Kind.Name).Distinct().Count());
        Assert.All(tried.Where(p => p.Item.Authority?.Permission is { } owner && owner != "conductor"), p => Assert.Equal(p.Item.Authority!.Permission, p.Permission));
        Assert.DoesNotContain(Of(new(RouteRequest.OfWhole(s_book), 10, Depth.Operate)).Stops.SelectMany(s => s.Points), p => p.Hands);
    }

    [Fact]
    public void SecondsTooLong_MoreThanThereIs_Told()
    {
        LessonRequest request = new(RouteRequest.OfWhole(s_book), 10, Depth.Repair) { Minutes = 120 };
        LessonPlan plan = Of(request);
        Assert.Equal(plan.Seconds - 7200, plan.SecondsTooLong, 1e-9);
        Assert.True(plan.SecondsTooLong > 0);
        Assert.Equal(0, Of(request with { Minutes = 24 * 60 }).SecondsTooLong);
    }

    /// <summary>Every division of the stops tried: none has a shorter longest station.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void Divide_RandomStops_TheLongestStationAsShortAsCanBe(int stations)
    {
        Random chance = new(stations);
        for (int n = stations; n < 11; n++)
        {
            ImmutableArray<LessonStop> stops = [.. Enumerable.Range(0, n).Select(_ => Stop(chance.Next(10, 900), chance.Next(0, 60)))];
            ImmutableArray<LessonStation> divided = Stationing.Divide(stops, stations, new());
            Assert.Equal(stations, divided.Length);
            Assert.Equal(stops.Select(s => (s.Stop, s.Seconds)), divided.SelectMany(s => s.Stops).Select(s => (s.Stop, s.Seconds)));
            Assert.Equal(Best(stops, stations), divided.Max(s => s.Seconds), 1e-9);
        }
    }

    [Fact]
    public void Stations_GroupsGoRound_InTheTimeOfTheLongest()
    {
        LessonPlan plan = Of(new(RouteRequest.OfSystem(s_book, "fuel"), 10, Depth.Know) { Stations = 3 });
        Assert.Equal(3, plan.Stations.Length);
        Assert.Equal(4, plan.GroupSize);
        Assert.True(plan.ChangeSeconds > 0);
        Assert.Equal(480 + (3 * plan.Stations.Max(s => s.Seconds)) + (2 * plan.ChangeSeconds) + 300, plan.Seconds, 1e-9);
    }

    /// <summary>Every question of the book stands in the lesson that shows its item, with its answer; those of alike things whose answer is the same once.</summary>
    [Fact]
    public void Questions_WholeMachine_AllOfTheBook()
    {
        Question[] asked = [.. Of(new(RouteRequest.OfWhole(s_book), 6, Depth.Know)).Stops.SelectMany(s => s.Questions)];
        Question[] all = [.. s_book.Items.Values.SelectMany(i => i.Questions)];
        Assert.Equal(all.Select(q => q.Answer).Distinct().Order(StringComparer.Ordinal), asked.Select(q => q.Answer).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(all.GroupBy(q => q.Answer).Where(g => Words(g.Key) < 8).Sum(g => g.Count()) + all.Select(q => q.Answer).Distinct().Count(a => Words(a) >= 8), asked.Length);
        Assert.True(all.Length >= 20 && asked.Length < all.Length);
    }

    /// <summary>What a station has told of one thing it tells of others of its sort by a hint; every station begins anew, and nothing that only this one says is lost.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Said_OfAlikeThings_OnceAStation(int stations)
    {
        LessonPlan plan = Of(new(RouteRequest.OfSystem(s_book, "fuel"), 12, Depth.Operate) { Stations = stations });
        foreach (LessonStation station in plan.Stations)
        {
            HashSet<(string, string)> told = [];
            foreach (LessonPoint point in station.Stops.SelectMany(s => s.Points))
            {
                string kind = point.Item.Kind.Name;
                Assert.All(point.Again, text => Assert.Contains((kind, text), told));
                Assert.Equal(point.Again.IsEmpty, point.As is null);
                Assert.True(point.As is not { } other || (s_book.Items[other].Kind.Name == kind && point.Said.Last().Contains(other, StringComparison.Ordinal)));
                Assert.Equal(point.Says, point.Says.Where(t => point.Again.Contains(t) || point.Said.Contains(t)));
                Assert.True(point.Words <= point.Says.Sum(Words));
                told.UnionWith(point.Says.Select(t => (kind, t)));
            }
        }

        Assert.Contains(plan.Stops.SelectMany(s => s.Points), p => p.As is not null);
    }

    /// <summary>Hands go only where the author lets them, whatever a role may operate: no emergency control is pushed to try it.</summary>
    [Fact]
    public void Hands_EmergencyControl_IsShownAlone()
    {
        Assert.DoesNotContain("emergency fuel cut-off, right", s_book.Items.Values.Where(i => i.Hands).Select(i => i.Name));
        LessonPoint[] tried = [.. Of(new(RouteRequest.OfSystem(s_book, "fuel"), 10, Depth.Operate) { Audience = "conductor" }).Stops.SelectMany(s => s.Points).Where(p => p.Hands)];
        Assert.Equal(["hand valve"], tried.Select(p => p.Item.Kind.Name));
    }

    /// <summary>Every stop, also on the way that a group goes which begins at another station.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Cautions_GravestFirst_WholeOnceAStation(int stations)
    {
        LessonPlan plan = Of(new(RouteRequest.OfWhole(s_book), 12, Depth.Know) { Stations = stations });
        LessonStop[] stops = [.. plan.Stops];
        Assert.Equal(stations, plan.Stations.Length);
        Assert.All(stops, s => Assert.Equal(s.Cautions.Select(c => c.Caution.Word).OrderDescending(), s.Cautions.Select(c => c.Caution.Word)));
        foreach (LessonStation station in plan.Stations)
        {
            HashSet<string> whole = [];
            foreach (LessonStop stop in station.Stops)
            {
                Assert.All(stop.Cautions, c => Assert.Equal(c.AsAt is null, whole.Add(c.Caution.Text)));
                Assert.All(stop.Cautions.Where(c => c.AsAt is not null), c =>
                {
                    Assert.Contains(stops[c.AsAt!.Value - 1], station.Stops);
                    Assert.Contains(stops[c.AsAt!.Value - 1].Cautions, t => t.AsAt is null && t.Caution.Text == c.Caution.Text);
                    Assert.Contains(stop.Notices, n => n.Word == c.Caution.Word && n.Text.Contains(c.Text, StringComparison.Ordinal) && n.Text.EndsWith($". As at stop {c.AsAt}.", StringComparison.Ordinal));
                    Assert.True(c.Words < Words(c.Caution.Text));
                });
            }
        }

        Assert.Contains(stops, s => s.Cautions.Any(c => c.AsAt is not null));
    }

    /// <summary>What the advice promises is what planning it gives.</summary>
    [Theory]
    [InlineData(1, 60)]
    [InlineData(3, 60)]
    [InlineData(8, 60)]
    [InlineData(8, 1000)]
    public void Advice_EachChange_GainsWhatItSays(int stations, int minutes)
    {
        LessonRequest request = new(RouteRequest.OfSystem(s_book, "fuel"), 10, Depth.Operate) { Stations = stations, Minutes = minutes, Audience = "conductor" };
        LessonPlan plan = Of(request);
        foreach (LessonChange change in plan.Advice)
        {
            LessonPlan? changed = change switch
            {
                LessonChange.Stations s => Of(request with { Stations = s.Count }),
                LessonChange.Shallower s => Of(request with { Depth = s.Depth }),
                _ => null,
            };
            Assert.True(change.SecondsLess >= 60);
            if (changed is not null)
            {
                Assert.Equal(plan.Seconds - changed.Seconds, change.SecondsLess, 1e-6);
                Assert.Equal(changed.SecondsTooLong == 0, change.Fits);
            }
        }

        // No number of stations that is shorter is held back, and none that is longer is told.
        double least = Enumerable.Range(1, 10).Min(n => Of(request with { Stations = n }).Seconds);
        if (minutes == 60)
        {
            Assert.Equal(plan.Seconds - least >= 60, plan.Advice.OfType<LessonChange.Stations>().Any());
        }
    }

    /// <summary>Passing a stop by takes no longer than what is said: the walk is the same, and what was told there first is told elsewhere.</summary>
    [Fact]
    public void Advice_WithoutAStop_AsPlannedWithoutWhatItShows()
    {
        LessonRequest request = new(RouteRequest.OfSystem(s_book, "fuel"), 10, Depth.Operate) { Minutes = 60 };
        LessonPlan plan = Of(request);
        LessonChange.Without without = Assert.Single(plan.Advice.OfType<LessonChange.Without>());
        LessonStop stop = plan.Stops.Single(s => s.Stop.Place.Name == without.Place);
        ImmutableArray<LessonEdit> passed = [.. stop.Points.Select(p => new LessonEdit { Id = Guid.NewGuid(), Lesson = Guid.Empty, Sort = LessonEditSort.Item, Item = p.Item.Name, Was = "", Becomes = "", By = "", At = default })];
        Assert.Equal(plan.Seconds - Of(request with { Edits = passed }).Seconds, without.SecondsLess, 1e-6);
    }

    [Fact]
    public void Waits_Stations_WhatEachGroupStandsIdle()
    {
        LessonPlan plan = Of(new(RouteRequest.OfWhole(s_book), 10, Depth.Operate) { Stations = 3 });
        double longest = plan.Stations.Max(s => s.Seconds);
        Assert.Equal(plan.Stations.Count(s => longest - s.Seconds >= 60), plan.GroupsWaiting);
        Assert.True(plan.GroupsWaiting > 0);
        Assert.Equal((3 * longest) - plan.Stations.Sum(s => s.Seconds), plan.WaitSeconds, 1e-6);
        Assert.Contains("every group waits", LessonWords.Summary(plan), StringComparison.Ordinal);
        Assert.Equal(0, Of(new(RouteRequest.OfSystem(s_book, "fuel"), 10, Depth.Operate)).GroupsWaiting);
    }

    /// <summary>Nobody speaks to an empty group, nor at a station where nothing is shown.</summary>
    [Fact]
    public void Stations_MoreThanPeopleOrStops_AsManyAsThereAre()
    {
        LessonRequest request = new(RouteRequest.OfSystem(s_book, "fuel"), 2, Depth.Know) { Stations = 5 };
        Assert.Equal(2, Of(request).Stations.Length);
        LessonEdit[] passed = [.. Of(request).Stops.Skip(1).SelectMany(s => s.Points).Select(p => new LessonEdit { Id = Guid.NewGuid(), Lesson = Guid.Empty, Sort = LessonEditSort.Item, Item = p.Item.Name, Was = "", Becomes = "", By = "", At = default })];
        Assert.Single(Of(request with { Edits = [.. passed] }).Stations);
    }

    private static LessonPlan Of(LessonRequest request) => LessonPlanner.Plan(s_book, request)!;

    private static int Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;

    private static LessonStop Stop(double seconds, double walk) =>
        new(new RouteStop(new Place("somewhere", Span.None, default, true, ""), walk, walk, [], [], [], []), [], [], 1, seconds);

    private static double Best(ImmutableArray<LessonStop> stops, int stations)
    {
        if (stations == 1)
        {
            return stops.Sum(s => s.Seconds) + stops.Skip(1).Sum(s => s.Stop.Seconds);
        }

        return Enumerable.Range(1, stops.Length - stations + 1).Min(first => Math.Max(Best(stops[..first], 1), Best(stops[first..], stations - 1)));
    }
}
