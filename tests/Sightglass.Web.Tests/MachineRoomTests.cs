using Sightglass.Web.Live;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests;

public sealed class MachineRoomTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass").FullName;

    [Fact]
    public void Room_LeftWithoutClosing_IsTakenUpAgainHeld()
    {
        MachineSnapshot last;
        using (MachineRoom room = Open())
        {
            Assert.False(room.WasRestored);
            Assert.Null(room.Begin(Shelves.Leak));
            Assert.Null(room.Session.Do(new WorldAction.Operate(-1, "centre return valve", "closed")));
            last = room.Session.Current;
        }

        using MachineRoom again = Open();
        Assert.True(again.WasRestored);
        Assert.Equal(Shelves.Leak, again.Session.Start);
        Assert.Equal("closed", again.Session.Current.Positions["centre return valve"]);
        Assert.InRange(last.Now.Ticks - again.Session.Current.Now.Ticks, 0, 1);
        Assert.Equal(Pace.Hold, again.Session.Pace);
    }

    [Fact]
    public void Begin_Another_KeepsTheOldRecordWhole()
    {
        using MachineRoom room = Open();
        room.Session.Do(new WorldAction.Operate(-1, "aft supply valve", "closed"));
        Assert.Null(room.Begin(Shelves.Leak));
        SessionRecord old = SessionRecord.Read(File.ReadAllBytes(Path.Combine(_folder, "run-1.jsonl")), out _)!;
        Assert.Equal(old.Lines[^1].Hash, $"{Replay.Hash(Shelves.Curlew.PlanOf(old.Header.Start.RoadNumber), old):x16}");
    }

    [Fact]
    public void Begin_SituationOfAnotherBook_RefusedAndTheOldGoesOn()
    {
        using MachineRoom room = Open();
        LiveSession before = room.Session;
        Assert.NotNull(room.Begin(new("4101", "no such situation", 1, 0)));
        Assert.Same(before, room.Session);
        Assert.Null(room.Session.Do(new WorldAction.Operate(-1, "aft supply valve", "closed")));
    }

    [Fact]
    public void Room_RecordOfAChangedBook_BeginsAnewAndKeepsIt()
    {
        string current = Path.Combine(_folder, "current.jsonl");
        RecordFile.Create(current, new(RecordHeader.CurrentFormat, "Curlew", "another", Shelves.Leak)).Dispose();
        using MachineRoom room = Open();
        Assert.False(room.WasRestored);
        Assert.Equal("another", SessionRecord.Read(File.ReadAllBytes(Path.Combine(_folder, "run-1.jsonl")), out _)!.Header.BookHash);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private MachineRoom Open() => new(Shelves.Curlew, _folder, new ManualClock());
}
