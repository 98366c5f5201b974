using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Draws;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.World;
using Sightglass.World.People;
using Sightglass.World.Records;

namespace Sightglass.Training.Tests.Drills;

/// <summary>Issue: a live record, its replay without pages and its replay after a restart have the same hash and the same sheet.</summary>
public sealed class DrillReplayTests
{
    private static readonly DrawKey s_key = DrawKey.Of("drill replay");

    /// <summary>Somebody does whatever can be done, at odd moments, while the clock on the wall looks in every so often.</summary>
    [Theory]
    [InlineData("a wheel smells", 1)]
    [InlineData("a wheel smells", 2)]
    [InlineData("light the train", 3)]
    [InlineData("a headlight is dark", 4)]
    [InlineData("stop and leave", 5)]
    [InlineData("the parking brake holds on", 6)]
    public void Run_OfARecord_SameHashAndSheetAsLive(string name, ulong seed)
    {
        using Scratch scratch = new();
        BoundDrill drill = Bind(name);
        SessionStart start = DrillReplay.StartOf(drill, 1, seed);
        (ulong hash, string sheet) = Live(drill, start, scratch.File("live"), seed);
        SessionRecord record = SessionRecord.Read(File.ReadAllBytes(scratch.File("live")), out _)!;
        DrillResult replay = DrillReplay.Run(drill, record);
        Assert.Null(replay.Trouble);
        Assert.Equal(hash, replay.Hash);
        Assert.Equal(sheet, Text(replay));
        Assert.NotEmpty(record.Lines);

        DrillResult again = DrillReplay.Run(Bind(name), record);
        Assert.Equal((replay.Hash, Text(replay)), (again.Hash, Text(again)));
    }

    /// <summary>Cut off anywhere, as by a power failure: what was acknowledged is there, and goes on the same way.</summary>
    [Fact]
    public void Run_OfARecordCutOff_IsThatOfWhatWasAcknowledged()
    {
        using Scratch scratch = new();
        BoundDrill drill = Bind("a headlight is dark");
        Live(drill, DrillReplay.StartOf(drill, 1, 9), scratch.File("live"), 9);
        byte[] whole = File.ReadAllBytes(scratch.File("live"));
        SessionRecord record = SessionRecord.Read(whole, out _)!;
        int header = whole.AsSpan().IndexOf((byte)'\n') + 1;
        for (int i = 0; i < 40; i++)
        {
            int cut = header + (int)(Draw.Uniform(9, (ulong)i, s_key) * (whole.Length - header));
            SessionRecord part = SessionRecord.Read(whole.AsSpan(0, cut), out int good)!;
            Assert.Equal(record.Lines.Take(part.Lines.Length), part.Lines);
            Assert.Equal(whole.AsSpan(0, cut).Count((byte)'\n') - 1, part.Lines.Length);
            Assert.InRange(cut - good, 0, 400);
        }

        Assert.Equal(DrillReplay.Run(drill, record).Hash, DrillReplay.Run(drill, SessionRecord.Read(whole, out _)!).Hash);
    }

    [Fact]
    public void Run_OfAnotherDrill_IsRefused()
    {
        BoundDrill drill = Bind("a headlight is dark");
        SessionRecord record = new(new(RecordHeader.CurrentFormat, "", "", new(null, drill.Drill.Situation, 1, 0, "another")), []);
        Assert.Contains("another", Assert.Throws<ArgumentException>(() => DrillReplay.Run(drill, record)).Message, StringComparison.Ordinal);
    }

    private static (ulong Hash, string Sheet) Live(BoundDrill drill, SessionStart start, string path, ulong seed)
    {
        using LaneBank bank = new(drill.Plan);
        World.World world = new(bank, 0);
        DrillRun run = DrillReplay.Begin(world, drill, start, [])!;
        using RecordFile file = RecordFile.Create(path, new(RecordHeader.CurrentFormat, drill.Plan.Book.Title, "", start));
        double now = 0;
        for (int i = 0; i < 60 && !run.IsOver; i++)
        {
            now += 0.2 + (Draw.Uniform(seed, (ulong)i, s_key.At(0)) * 25);
            world.RunTo(SimTime.FromSeconds(now)); // a look: it changes nothing
            WorldAction[] can = [.. Possible(drill, world).Where(a => world.HindranceOf(a) == Hindrance.None)];
            if (can.Length > 0)
            {
                WorldAction act = can[(int)(Draw.Uniform(seed, (ulong)i, s_key.At(1)) * can.Length)];
                SimTime at = new(world.Now.Ticks + 1);
                file.Append(new(at.Ticks, act));
                world.Do(act, at);
            }
        }

        SimTime end = SimTime.FromSeconds(now + 30);
        file.Append(new(end.Ticks - 1, new WorldAction.Declare(drill.Person)));
        world.Do(new WorldAction.Declare(drill.Person), new(end.Ticks - 1));
        world.RunTo(end);
        file.Note(new(world.Now.Ticks));
        string sheet = Text(new(run.Outcome, Training.Evaluation.Evaluator.Evaluate(drill, run.Outcome), null, [], null, 0, 0));
        world.CutHere();
        return (world.Hash, sheet);
    }

    private static IEnumerable<WorldAction> Possible(BoundDrill drill, World.World world)
    {
        int person = drill.Person;
        string? here = world.PlaceOf(world.People[person]);
        var within = drill.Plan.Book.Items.Values.Where(i => here is not null && i.Places.Contains(here));
        return within.SelectMany(i => i.Positions.Select(p => (WorldAction)new WorldAction.Operate(person, i.Name, p)))
            .Concat(drill.Plan.Book.Places.Keys.Select(p => new WorldAction.Walk(person, p)))
            .Concat(drill.Plan.Book.Protections.Keys.SelectMany(p => new WorldAction[] { new WorldAction.Ask(person, p), new WorldAction.GiveBack(person, p) }))
            .Concat(drill.Drill.Reports.Select(r => new WorldAction.Report(person, r.Name)))
            .Append(new WorldAction.Tell(person, "mechanical desk", "here"))
            .Append(new WorldAction.TakeHint(person));
    }

    private static string Text(DrillResult result) => string.Join('\n', result.Sheet.Lines.Select(l => $"{l.IsMet} {l.Said}: {l.Shown} {l.At?.Ticks}")) + $"\n{result.Sheet.Points} {result.Sheet.IsPassed} {string.Join(' ', result.Outcome.Notes)}";

    private static BoundDrill Bind(string name)
    {
        DiagnosticList found = [];
        return DrillBinder.Bind(Books.CurlewFleet, Books.Curlew.Book.Drills[name], found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private sealed class Scratch : IDisposable
    {
        private readonly string _folder = Directory.CreateTempSubdirectory("drill").FullName;

        public string File(string name) => Path.Combine(_folder, name);

        public void Dispose() => Directory.Delete(_folder, recursive: true);
    }
}
