using Sightglass.Basics.Time;
using Sightglass.Web.Room;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests.Room;

public sealed class TrainingRoomTests : IDisposable
{
    private const string Dark = "a headlight is dark";
    private const string Hinted = "a leak in the yard";

    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-room-").FullName;

    [Theory]
    [InlineData("", "Write your name")]
    [InlineData("   ", "Write your name")]
    [InlineData("0123456789012345678901234567890123456789012345678901234567890", "at most 60")]
    public void Join_WithoutAProperName_IsSaid(string name, string says)
    {
        using TrainingRoom room = Open();
        Assert.Contains(says, room.Join(name, out Seat? seat, out _), StringComparison.Ordinal);
        Assert.Null(seat);
    }

    [Fact]
    public void Find_AnotherKey_IsNobody()
    {
        using TrainingRoom room = Open();
        Seat seat = Join(room, "A. Alder", out string key);
        Assert.Same(seat, room.Find(key));
        Assert.Null(room.Find(key + "0"));
        Assert.Null(room.Find(""));
        Assert.DoesNotContain(key, File.ReadAllText(Path.Combine(_folder, "room.jsonl")), StringComparison.Ordinal);
    }

    /// <summary>Two in one world see each other where they stand, and not elsewhere.</summary>
    [Fact]
    public void Begin_TwoTogether_SeeEachOtherAtOnePlace()
    {
        using TrainingRoom room = Open();
        string drill = Shelves.Curlew.Book.Drills.Values.First(d => Rooms.Bind(d.Name).Situation.People.Length > 1).Name;
        Seat one = Join(room, "one"), two = Join(room, "two");
        Assert.Null(room.Begin(drill, 1, 0, [one, two]));
        Assert.Same(one.Drill, two.Drill);
        DrillSession session = one.Drill!.Session!;
        using IDisposable first = room.Open(one), second = room.Open(two);
        LetGo(session);
        string at = session.Current.Sights[one.Person].Place!;
        if (session.Current.Sights[two.Person].Place != at)
        {
            Assert.Null(session.Act(new WorldAction.Walk(two.Person, at)));
            Assert.True(session.Forward(SimTime.FromSeconds(900), w => w.PlaceOf(w.People[two.Person]) == at));
        }

        string role = session.Drill.Situation.People[one.Person].Role, other = session.Drill.Situation.People[two.Person].Role;
        Assert.Contains(other, session.Current.Sights[one.Person].Roles);
        Assert.Contains(role, session.Current.Sights[two.Person].Roles);
        string elsewhere = session.Plan.Book.Places.Keys.First(p => p != at && session.Ask(w => w.HindranceOf(new WorldAction.Walk(two.Person, p))) == World.People.Hindrance.None);
        Assert.Null(session.Act(new WorldAction.Walk(two.Person, elsewhere)));
        Assert.DoesNotContain(other, session.Current.Sights[one.Person].Roles);
    }

    [Fact]
    public async Task Open_PageGone_HoldsUntilItIsBackAtTheSameSecond()
    {
        using TrainingRoom room = Open();
        Seat seat = Join(room, "A. Alder");
        Assert.Null(room.Begin(Dark, 1, 0, [seat]));
        DrillSession session = seat.Drill!.Session!;
        session.Release(HoldReason.Brief);
        Assert.True(session.Held.HasFlag(HoldReason.Lost)); // no page yet
        IDisposable page = room.Open(seat);
        Assert.Equal(HoldReason.None, session.Held);
        page.Dispose();
        for (int i = 0; i < 100 && session.Held == HoldReason.None; i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Equal(HoldReason.Lost, session.Held);
        SimTime at = session.Current.Now;
        await Task.Delay(300, TestContext.Current.CancellationToken);
        Assert.Equal(at, session.Current.Now);
        using IDisposable back = room.Open(seat);
        Assert.Equal(HoldReason.None, session.Held);
        Assert.InRange(session.Current.Now.Ticks - at.Ticks, 0, SimTime.FromSeconds(1).Ticks);
    }

    [Fact]
    public void Room_LeftWithoutClosing_EverybodyIsBackAtTheSameSecondHeld()
    {
        string key;
        SimTime at;
        using (TrainingRoom room = Open())
        {
            Seat seat = Join(room, "A. Alder", out key);
            Assert.Null(room.Begin(Hinted, 1, 4, [seat]));
            DrillSession session = seat.Drill!.Session!;
            using IDisposable page = room.Open(seat);
            LetGo(session);
            session.Forward(SimTime.FromSeconds(33));
            Assert.Null(session.Act(new WorldAction.TakeHint(seat.Person)));
            Assert.Null(room.Note(seat, "smell at the rear truck"));
            Assert.Null(room.Bookmark(seat.Drill!, "before the look"));
            Assert.Null(room.Observe(seat.Drill!, "keeps three points of contact", Verdict.NoGo));
            at = session.Current.Now;
        }

        using TrainingRoom again = Open();
        Seat back = again.Find(key)!;
        Assert.Equal("A. Alder", back.Name);
        DrillSession taken = back.Drill!.Session!;
        Assert.InRange(at.Ticks - taken.Current.Now.Ticks, 0, 1);
        Assert.True(taken.Held.HasFlag(HoldReason.All | HoldReason.Lost));
        Assert.True(again.IsHeld);
        Assert.Equal("smell at the rear truck", Assert.Single(back.Notes).Text);
        Assert.Equal("before the look", Assert.Single(back.Drill!.Bookmarks).Name);
        Assert.Equal(Verdict.NoGo, back.Drill!.Observed["keeps three points of contact"]);
        Assert.Contains(taken.Current.Notes, n => n.Kind == Training.Drills.DrillNoteKind.Hint);
    }

    [Fact]
    public void GoBack_ToAMoment_AnotherBeginsThereAndTheFirstKeepsItsRecord()
    {
        using TrainingRoom room = Open();
        Seat seat = Join(room, "A. Alder");
        Assert.Null(room.Begin(Hinted, 1, 0, [seat]));
        RoomDrill first = seat.Drill!;
        DrillSession session = first.Session!;
        using IDisposable page = room.Open(seat);
        LetGo(session);
        session.Forward(SimTime.FromSeconds(20));
        Assert.Null(session.Act(new WorldAction.TakeHint(seat.Person)));
        Assert.Null(room.Note(seat, "early"));
        session.Forward(SimTime.FromSeconds(40));
        Assert.Null(session.Act(new WorldAction.Declare(seat.Person)));
        Assert.Null(room.Note(seat, "late"));
        string kept = File.ReadAllText(Path.Combine(_folder, first.Record));

        Assert.Null(room.GoBack(first, SimTime.FromSeconds(30)));
        RoomDrill second = seat.Drill!;
        Assert.Equal((first.Number, 2), (second.From, second.Number));
        Assert.Equal(30, second.Session!.Current.Now.Seconds, 1e-6);
        Assert.False(second.Session.Current.IsOver);
        Assert.Single(second.Session.Current.Notes, n => n.Kind == Training.Drills.DrillNoteKind.Hint);
        Assert.True(second.Session.Held.HasFlag(HoldReason.One));
        Assert.Equal("early", Assert.Single(seat.Notes).Text);
        Assert.NotNull(first.Ended);
        Assert.StartsWith(kept, File.ReadAllText(Path.Combine(_folder, first.Record)), StringComparison.Ordinal);

        // What was done until then is the same as if nobody had gone on: the state is that of a run straight to it.
        using DrillSession straight = Rooms.Begin(Rooms.Bind(Hinted), new ManualClock());
        straight.Forward(new(SimTime.FromSeconds(20).Ticks));
        Assert.Null(straight.Act(new WorldAction.TakeHint(seat.Person)));
        straight.Forward(SimTime.FromSeconds(30));
        Assert.Equal(straight.Close(), second.Session.Close());
    }

    /// <summary>Cut off anywhere, as by a power failure: whatever is whole holds, and the room opens.</summary>
    [Fact]
    public void Room_LogCutOff_HoldsWhatIsWhole()
    {
        using (TrainingRoom room = Open())
        {
            for (int i = 0; i < 6; i++)
            {
                Join(room, $"trainee {i}");
            }
        }

        string path = Path.Combine(_folder, "room.jsonl");
        byte[] whole = File.ReadAllBytes(path);
        for (int cut = 0; cut <= whole.Length; cut += 17)
        {
            File.WriteAllBytes(path, whole[..cut]);
            using TrainingRoom room = Open();
            Assert.Equal(whole.AsSpan(0, cut).Count((byte)'\n'), room.Seats.Length);
            Assert.Null(room.Join("another", out _, out _));
        }
    }

    [Fact]
    public void Room_BookHasChanged_TheDrillStaysClosedWithItsRecord()
    {
        string record;
        using (TrainingRoom room = Open())
        {
            Seat seat = Join(room, "A. Alder");
            Assert.Null(room.Begin(Dark, 1, 0, [seat]));
            record = Path.Combine(_folder, seat.Drill!.Record);
        }

        string text = File.ReadAllText(record).Replace(Shelves.Curlew.Hash, "another", StringComparison.Ordinal);
        File.WriteAllText(record, text);
        using TrainingRoom again = Open();
        Assert.Null(again.Seats.Single().Drill!.Session);
        Assert.Equal(text, File.ReadAllText(record));
        Assert.Null(again.Begin(Dark, 1, 1, [again.Seats.Single()]));
    }

    [Fact]
    public void Begin_MoreThanThereArePeople_IsSaid()
    {
        using TrainingRoom room = Open();
        Seat[] seats = [.. Enumerable.Range(0, 9).Select(i => Join(room, $"trainee {i}"))];
        Assert.Contains("In this drill there", room.Begin(Dark, 1, 0, seats), StringComparison.Ordinal);
        Assert.Contains("no drill", room.Begin("no such drill", 1, 0, [seats[0]]), StringComparison.Ordinal);
        Assert.Empty(room.Drills);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Nothing holds it, and the clock on the wall does not move it: the test does.</summary>
    private static void LetGo(DrillSession session)
    {
        session.Wanted = Live.Pace.Hold;
        session.Release(HoldReason.Brief);
    }

    private TrainingRoom Open() => new(Shelves.Curlew, _folder, TimeProvider.System);

    private static Seat Join(TrainingRoom room, string name) => Join(room, name, out _);

    private static Seat Join(TrainingRoom room, string name, out string key)
    {
        Assert.Null(room.Join(name, out Seat? seat, out key));
        return seat!;
    }
}
