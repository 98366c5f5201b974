using Sightglass.Basics.Time;
using Sightglass.Training.Debrief;
using Sightglass.Training.Drills;
using Sightglass.World.Records;

namespace Sightglass.Training.Tests.Debrief;

/// <summary>Issue: same record and rule version, same sheet, for ever; looking at a run changes nothing in it.</summary>
public sealed class DebriefReplayTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Run_OfARecord_SameHashAndSheetAsWithoutLooking(bool passed)
    {
        SessionRecord record = passed ? Worked.Passed : Worked.Failed;
        DrillResult bare = DrillReplay.Run(Worked.Drill, record);
        DebriefFilm film = passed ? Worked.Film : DebriefReplay.Run(Worked.Drill, record);
        Assert.Equal(passed, film.Result.IsPassed);
        Assert.Equal(bare.Hash, film.Result.Hash);
        Assert.Equal(Text(bare), Text(film.Result));
        Assert.Equal(bare.Journal.Select(j => (j.Time, j.Text)), film.Result.Journal.Select(j => (j.Time, j.Text)));
    }

    [Fact]
    public void Run_OfARecord_KeepsWhereSomebodyWasWhatTheySawAndWhatWasSo()
    {
        DebriefFilm film = Worked.Film;
        Assert.InRange(film.Moments.Length, 50, DebriefFilm.MostMoments);
        Assert.Equal(film.Moments.Select(m => m.At).Order(), film.Moments.Select(m => m.At));
        Assert.Equal((SimTime.Zero, SimTime.FromSeconds(100)), (film.Moments[0].At, film.Moments[^1].At));

        DebriefMoment walking = film.At(SimTime.FromSeconds(1.5));
        Assert.Equal(film.Drill.Plan.Book.Items["headlight breaker"].Places[0], walking.People[0].Towards);
        Assert.Empty(walking.Seen.Items); // on the way there is nothing to read

        DebriefMoment there = film.At(SimTime.FromSeconds(59));
        Assert.Equal("off", there.Seen.Items.Single(i => i.Name == "headlight breaker").Position);
        Assert.Equal("on", film.At(SimTime.FromSeconds(70)).Seen.Items.Single(i => i.Name == "headlight breaker").Position);

        // Wherever something was noted a moment just after it is kept.
        Assert.All(film.Result.Outcome.Notes.Where(n => n.At > SimTime.Zero), n => Assert.InRange(film.Moments.Min(m => Math.Abs(m.At.Ticks - n.At.Ticks)), 0, 1));
    }

    /// <summary>A moment that was kept, and the same one run to exactly, are the same.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1.5)]
    [InlineData(62)]
    [InlineData(100)]
    public void At_AMomentThatIsKept_IsTheSame(double about)
    {
        DebriefMoment kept = Worked.Film.At(SimTime.FromSeconds(about));
        DebriefMoment exact = DebriefReplay.At(Worked.Drill, Worked.Passed, kept.At);
        Assert.Equal(kept.At, exact.At);
        Assert.Equal(kept.People, exact.People);
        Assert.Equal(kept.Truth, exact.Truth);
        Assert.Equal(kept.Faults, exact.Faults);
        Assert.Equal(kept.Seen.Items, exact.Seen.Items);
        Assert.Equal((kept.Seen.Place, kept.Seen.Towards), (exact.Seen.Place, exact.Seen.Towards));
    }

    [Fact]
    public void Run_NoLongerWanted_Ends()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => DebriefReplay.Run(Worked.Drill, Worked.Passed, stop.Token));
    }

    [Fact]
    public void Run_OfAnotherDrill_IsRefused()
    {
        SessionRecord record = Worked.Passed;
        record = record with { Header = record.Header with { Start = record.Header.Start with { Drill = "another" } } };
        Assert.Contains("another", Assert.Throws<ArgumentException>(() => DebriefReplay.Run(Worked.Drill, record)).Message, StringComparison.Ordinal);
    }

    /// <summary>What a drill is judged by is followed down through facts to numbers and to the instruments that tell of them.</summary>
    [Fact]
    public void Signals_OfALeak_AreWhatWasSpilledAndTheGlasses()
    {
        BoundDrill leak = DrillBinder.Bind(Books.CurlewFleet, Books.Curlew.Book.Drills["a compartment leaks at a stand"], [])!;
        string[] names = [.. DebriefSignals.Of(leak).Select(s => s.Name)];
        Assert.Contains("spilled of aft compartment", names);
        Assert.Contains("volume of centre compartment", names);
        Assert.Contains(DebriefSignals.Of(leak), s => s.Instrument is { } item && item.Name.Contains("sight glass", StringComparison.Ordinal));
        Assert.Equal(names, names.Distinct());
    }

    private static string Text(DrillResult result) => string.Join('\n', result.Sheet.Lines.Select(l => $"{l.IsMet} {l.Said}: {l.Shown} {l.At?.Ticks}")) + $"\n{result.Sheet.Points} {result.Sheet.IsPassed} {string.Join(' ', result.Outcome.Notes)}";
}
