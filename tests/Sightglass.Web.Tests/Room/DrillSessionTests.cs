using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.Web.Room;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests.Room;

/// <summary>Issue: a live record, its replay without pages and its replay after a restart have the same hash and the same sheet.</summary>
public sealed class DrillSessionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-drill-").FullName;
    private readonly ManualClock _clock = new();

    [Theory]
    [InlineData("a headlight is dark", 1, Pace.Real)]
    [InlineData("light the train", 2, Pace.Four)]
    [InlineData("a compartment leaks at a stand", 3, Pace.Sixty)]
    public void Beat_UntilItIsJudged_SameHashAndSheetAsItsReplay(string name, ulong seed, Pace pace)
    {
        string path = Path.Combine(_folder, "live");
        using DrillSession session = Rooms.Begin(Rooms.Bind(name), _clock, path);
        session.Wanted = pace;
        Rooms.Work(session, _clock, seed, 0, pace == Pace.Sixty ? 10 : 25);
        Finish(session);
        ulong hash = session.Close();
        string sheet = Rooms.Text(session.Current.Sheet!);
        session.Dispose();

        SessionRecord record = SessionRecord.Read(File.ReadAllBytes(path), out _)!;
        Assert.Equal($"{hash:x16}", record.Hash);
        DrillResult replay = DrillReplay.Run(Rooms.Bind(name), record);
        Assert.Null(replay.Trouble);
        Assert.Equal(hash, replay.Hash);
        Assert.Equal(sheet, Rooms.Text(replay.Sheet));
        Assert.True(replay.Sheet.EndedAt is not null);
    }

    /// <summary>However often it is looked at: looking changes nothing.</summary>
    [Fact]
    public void Restore_LeftInTheMidst_GoesOnToTheSameEnd()
    {
        BoundDrill drill = Rooms.Bind("a headlight is dark");
        string path = Path.Combine(_folder, "left");
        (ulong whole, string sheet) = Through(drill, path);

        // The same actions at the same moments, left behind after half of them and taken up in another session.
        SessionRecord record = SessionRecord.Read(File.ReadAllBytes(path), out _)!;
        ImmutableArray<RecordLine> lines = [.. record.Lines.Where(l => l.Do is not null)];
        string half = Path.Combine(_folder, "half");
        RecordFile.Create(half, record.Header, lines[..(lines.Length / 2)]).Dispose();
        RecordFile file = RecordFile.Open(half, out SessionRecord? read)!;
        using DrillSession again = DrillSession.Restore(drill, read!, _clock, file, [])!;
        Assert.Equal(lines[(lines.Length / 2) - 1].At, again.Current.Now.Ticks);
        foreach (RecordLine line in lines[(lines.Length / 2)..])
        {
            again.Forward(new SimTime(line.At - 1));
            Assert.Null(again.Do(line.Do!));
            Assert.InRange(again.Current.Now.Ticks - line.At, 0, 1);
        }

        Finish(again);
        Assert.Equal(whole, again.Close());
        Assert.Equal(sheet, Rooms.Text(again.Current.Sheet!));
    }

    [Fact]
    public void Act_Held_IsRefusedAndNothingMoves()
    {
        using DrillSession session = Rooms.Begin(Rooms.Bind("a headlight is dark"), _clock);
        _clock.Pass(0.5);
        session.Beat();
        session.Hold(HoldReason.One);
        session.Hold(HoldReason.Lost);
        SimTime at = session.Current.Now;
        _clock.Pass(0.5);
        session.Beat();
        Assert.Equal(at, session.Current.Now);
        Assert.NotNull(session.Act(new WorldAction.TakeHint(session.Drill.Person)));
        session.Release(HoldReason.One);
        Assert.NotNull(session.Act(new WorldAction.TakeHint(session.Drill.Person))); // the other reason is left
        session.Release(HoldReason.Lost);
        Assert.Null(session.Act(new WorldAction.TakeHint(session.Drill.Person)));
    }

    [Fact]
    public void Act_Stop_HoldsEverythingAndIsOnRecord()
    {
        using DrillSession session = Rooms.Begin(Rooms.Bind("a headlight is dark"), _clock);
        Assert.Null(session.Act(new WorldAction.Stop(session.Drill.Person)));
        Assert.True(session.Held.HasFlag(HoldReason.Stop));
        Assert.Contains(session.Current.Notes, n => n.Kind == DrillNoteKind.Stopped);
        Assert.Contains(session.Current.Said, s => s.Text.Contains("stop", StringComparison.Ordinal));
    }

    [Fact]
    public void Act_TakenOver_WaitsUntilItIsHandedBackAndTheSheetSaysSo()
    {
        using DrillSession session = Rooms.Begin(Rooms.Bind("a headlight is dark"), _clock);
        int person = session.Drill.Person;
        Assert.Null(session.Do(new WorldAction.TakeOver(person)));
        Assert.True(session.Current.IsTakenOver);
        Assert.NotNull(session.Act(new WorldAction.Declare(person)));
        Assert.Null(session.Do(new WorldAction.HandBack(person)));
        Assert.Null(session.Act(new WorldAction.Declare(person)));
        Assert.Contains(session.Current.Sheet!.Lines, l => l.Said.Contains("took over", StringComparison.Ordinal));
    }

    /// <summary>What cannot be done is said and not written down.</summary>
    [Fact]
    public void Act_OutOfReachOrBusy_IsSaid()
    {
        string path = Path.Combine(_folder, "refused");
        using DrillSession session = Rooms.Begin(Rooms.Bind("a headlight is dark"), _clock, path);
        int person = session.Drill.Person;
        string far = session.Plan.Book.Items.Values.First(i => i.Positions.Length > 1 && session.Plan.Items.TryGetValue(i.Name, out var p) && p.Position is not null && !session.Current.Sights[person].Items.Any(s => s.Name == i.Name)).Name;
        Assert.Contains("out of reach", session.Act(new WorldAction.Operate(person, far, session.Plan.Book.Items[far].Positions[0])), StringComparison.Ordinal);
        string elsewhere = session.Plan.Book.Places.Keys.First(p => p != session.Current.Sights[person].Place);
        Assert.Null(session.Act(new WorldAction.Walk(person, elsewhere)));
        Assert.NotNull(session.Act(new WorldAction.Walk(person, elsewhere)));
        Assert.Equal("that cannot be done", session.Act(new WorldAction.Tell(99, "nobody", "x")));
        session.Dispose();
        Assert.Single(SessionRecord.Read(File.ReadAllBytes(path), out _)!.Lines, l => l.Do is not null);
    }

    [Fact]
    public void Forward_UntilSomethingIsSo_StopsThereAndChangesNothing()
    {
        BoundDrill drill = Rooms.Bind("a compartment leaks at a stand");
        using DrillSession one = Rooms.Begin(drill, _clock);
        Assert.True(one.Forward(SimTime.FromSeconds(600), w => w.Now.Seconds >= 90));
        Assert.Equal(90, one.Current.Now.Seconds, 1e-6);
        using DrillSession other = Rooms.Begin(drill, _clock);
        Assert.False(other.Forward(SimTime.FromSeconds(90)));
        Assert.Equal(one.Close(), other.Close());
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private (ulong Hash, string Sheet) Through(BoundDrill drill, string path)
    {
        using DrillSession session = Rooms.Begin(drill, _clock, path);
        session.Wanted = Pace.Four;
        Rooms.Work(session, _clock, 7, 0, 20);
        Finish(session);
        return (session.Close(), Rooms.Text(session.Current.Sheet!));
    }

    private static void Finish(DrillSession session)
    {
        for (int i = 0; i < 400 && session.Act(new WorldAction.Declare(session.Drill.Person)) is not null && !session.Current.IsOver; i++)
        {
            session.Forward(session.Current.Now + SimTime.FromSeconds(1));
        }

        for (int i = 0; i < 4000 && !session.Beat(); i++)
        {
            // run on until it is judged
        }

        Assert.True(session.Current.IsJudged);
    }
}
