using System.Diagnostics;
using System.Globalization;
using System.Text;
using Sightglass.Training.Drills;
using Sightglass.Web.Room;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests.Room;

/// <summary>
/// Issue: 200 sessions under SIGKILL at random moments, none lost, none corrupted, every acknowledged action present. A program in which 200 drills are worked by several hands at once is
/// killed without warning, twice; the room that opens after it has them all.
/// </summary>
public sealed class KilledRoomTests
{
    private const string Child = "SIGHTGLASS_ROOM_CHILD";
    private const string Drill = "a headlight is dark";
    private const int Sessions = 200;
    private const int Hands = 4;

    [Fact]
    public async Task Room_KilledAtAnyMoment_LosesNothingAcknowledged()
    {
        if (Environment.GetEnvironmentVariable(Child) is { } folder)
        {
            Work(folder);
            return;
        }

        string kept = Directory.CreateTempSubdirectory("sightglass-killed-").FullName;
        try
        {
            await Kill(kept, 130);
            Check(kept, last: false);
            await Kill(kept, 710);
            Check(kept, last: true);
        }
        finally
        {
            Directory.Delete(kept, recursive: true);
        }
    }

    private static void Check(string folder, bool last)
    {
        Dictionary<int, int> acknowledged = [];
        string[] lines = File.ReadAllText(Path.Combine(folder, "acknowledged")).Split('\n')[..^1];
        foreach (int number in lines.Select(l => int.Parse(l, CultureInfo.InvariantCulture)))
        {
            acknowledged[number] = acknowledged.GetValueOrDefault(number) + 1;
        }

        Assert.True(acknowledged.Values.Sum() > 50, $"{lines.Length} acknowledged");
        using TrainingRoom room = new(Shelves.Curlew, Path.Combine(folder, "room"), TimeProvider.System);
        Assert.Equal(Sessions, room.Drills.Length);
        int more = 0;
        foreach (RoomDrill drill in room.Drills)
        {
            Assert.NotNull(drill.Session);
            SessionRecord record = room.RecordOf(drill)!;
            int there = record.Lines.Count(l => l.Do is not null), told = acknowledged.GetValueOrDefault(drill.Number);
            Assert.True(there >= told, $"drill {drill.Number}: {told} acknowledged, {there} on record");
            more += there - told;
            if (drill.Number % 20 == 1)
            {
                drill.Session!.Hold(HoldReason.One);
                Assert.Equal(record.End, drill.Session.Current.Now.Ticks);
                DrillResult replay = DrillReplay.Run(drill.Drill!, record);
                Assert.Equal(replay.Outcome.Notes, drill.Session.Current.Notes);
                Assert.True(!last || replay.Hash == drill.Session.Close());
            }
        }

        Assert.InRange(more, 0, 2 * Hands); // what was on its way when the program was killed, each time
    }

    private static async Task Kill(string folder, int pause)
    {
        string acknowledged = Path.Combine(folder, "acknowledged");
        long before = File.Exists(acknowledged) ? new FileInfo(acknowledged).Length : 0;
        ProcessStartInfo start = new("dotnet", ["exec", typeof(KilledRoomTests).Assembly.Location, "--filter-method", $"*{nameof(Room_KilledAtAnyMoment_LosesNothingAcknowledged)}"]) { RedirectStandardOutput = true };
        start.Environment[Child] = folder;
        using Process child = Process.Start(start)!;
        Task<string> said = child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        for (int i = 0; i < 9000 && !child.HasExited && !(File.Exists(acknowledged) && new FileInfo(acknowledged).Length > before + 200); i++)
        {
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }

        await Task.Delay(pause, TestContext.Current.CancellationToken);
        Assert.False(child.HasExited, child.HasExited ? await said : "");
        child.Kill();
        await child.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    private static void Work(string folder)
    {
        using TrainingRoom room = new(Shelves.Curlew, Path.Combine(folder, "room"), TimeProvider.System);
        while (room.Drills.Length < Sessions)
        {
            int number = room.Seats.Length + 1;
            Assert.Null(room.Join($"trainee {number}", out Seat? seat, out _));
            Assert.Null(room.Begin(Drill, 1, (ulong)number, [seat!]));
        }

        List<IDisposable> pages = [.. room.Seats.Select(room.Open)];
        room.HoldAll(false);
        foreach (RoomDrill drill in room.Drills)
        {
            drill.Session!.Release(HoldReason.Brief);
        }

        using FileStream acknowledged = new(Path.Combine(folder, "acknowledged"), FileMode.Append, FileAccess.Write, FileShare.Read, bufferSize: 0);
        Thread[] hands = [.. Enumerable.Range(0, Hands).Select(h => new Thread(() => Hand(room.Drills, h, acknowledged)))];
        foreach (Thread hand in hands)
        {
            hand.Start();
        }

        hands[0].Join();
        pages.ForEach(p => p.Dispose());
    }

    private static void Hand(IReadOnlyList<RoomDrill> drills, int hand, FileStream acknowledged)
    {
        for (int i = hand; ; i += Hands)
        {
            RoomDrill drill = drills[i % drills.Count];
            DrillSession session = drill.Session!;
            WorldAction wish = i % 3 == 0 ? new WorldAction.TakeHint(session.Drill.Person) : Rooms.Wish(session, 5, i);
            if (session.Act(wish) is null)
            {
                byte[] line = Encoding.ASCII.GetBytes(FormattableString.Invariant($"{drill.Number}\n"));
                lock (acknowledged)
                {
                    acknowledged.Write(line);
                }
            }
        }
    }
}
