using Sightglass.Web.Room;

namespace Sightglass.Web.Tests.Room;

/// <summary>A room of the demo book with a clock that a test moves.</summary>
internal sealed class DrillRoom : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass").FullName;

    public DrillRoom() => Room = new(Shelves.Curlew, _folder, Clock);

    public ManualClock Clock { get; } = new();

    public TrainingRoom Room { get; }

    /// <summary>Somebody comes in and opens their page.</summary>
    public Seat Comes(string name)
    {
        Assert.Null(Room.Join(name, out Seat? seat, out _));
        _ = Room.Open(seat!);
        return seat!;
    }

    /// <summary>A drill of their own, let go.</summary>
    public DrillSession Begins(string drill, params Seat[] seats)
    {
        Assert.Null(Room.Begin(drill, 1, 0, seats));
        DrillSession session = seats[0].Drill!.Session!;
        session.Release(HoldReason.Brief);
        return session;
    }

    public void Dispose()
    {
        Room.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
