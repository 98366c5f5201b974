using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Live;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests;

public sealed class LiveSessionProperties : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass").FullName;

    [Fact]
    public void Close_AnyDeedsAtAnyPace_SameHashReplayedWithoutPages() => Deeds.Some.Holds(
        deeds =>
        {
            (ulong live, string path) = Live(deeds);
            SessionRecord record = SessionRecord.Read(File.ReadAllBytes(path), out _)!;
            Assert.Equal($"{live:x16}", record.Lines[^1].Hash);
            Assert.Equal(live, Replay.Hash(Shelves.Curlew.PlanOf("4101"), record));
        },
        iter: 12);

    [Fact]
    public void Restore_CutAtAnyLength_GoesOnToTheSameHash() => Gen.Select(Deeds.Some, Gen.Double.Unit).Holds(
        (deeds, share) =>
        {
            (ulong whole, string path) = Live(deeds);
            byte[] bytes = File.ReadAllBytes(path);
            int header = Array.IndexOf(bytes, (byte)'\n') + 1;
            string cut = path + ".cut";
            File.WriteAllBytes(cut, bytes[..(header + (int)((bytes.Length - header) * share))]);
            SessionRecord all = SessionRecord.Read(bytes, out _)!;
            Assert.Equal(whole, GoOn(cut, all));
        },
        iter: 25);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Restores what is left, then does the rest of what was done before, and closes at the same moment.</summary>
    private static ulong GoOn(string cut, SessionRecord all)
    {
        RecordFile file = RecordFile.Open(cut, out SessionRecord? left)!;
        SessionRecord open = left! with { Lines = [.. left.Lines.Where(l => l.Hash is null)] };
        using LiveSession session = LiveSession.Restore(Shelves.Curlew.PlanOf("4101"), open, new ManualClock(), file, new DiagnosticList())!;
        foreach (RecordLine line in all.Lines.Skip(open.Lines.Length))
        {
            session.Repeat(line);
        }

        return session.Close();
    }

    private (ulong Hash, string Path) Live(Deed[] deeds)
    {
        string path = Path.Combine(_folder, $"{Guid.NewGuid():n}.jsonl");
        ManualClock clock = new();
        RecordFile file = RecordFile.Create(path, new(RecordHeader.CurrentFormat, "Curlew", Shelves.Curlew.Hash, Shelves.Leak));
        using LiveSession session = LiveSession.Begin(Shelves.Curlew.PlanOf("4101"), Shelves.Leak, clock, file, new DiagnosticList())!;
        Deeds.Work(session, clock, deeds);
        return (session.Close(), path);
    }
}
