using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.Web.Live;
using Sightglass.Web.Machine;
using Sightglass.World;
using Sightglass.World.Journal;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests;

public sealed class LiveSessionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass").FullName;
    private readonly ManualClock _clock = new();

    [Theory]
    [InlineData(Pace.Real, 2)]
    [InlineData(Pace.Four, 8)]
    [InlineData(Pace.Sixty, 120)]
    public void Look_AtAPace_GoesAsFarAsTheClockSays(Pace pace, double seconds)
    {
        using LiveSession session = Begin();
        session.SetPace(pace);
        for (int i = 0; i < 20; i++)
        {
            _clock.Pass(0.1);
            session.Look();
        }

        Assert.Equal(seconds, session.Current.Now.Seconds, 1e-3);
    }

    /// <summary>The pump sends air and the regulator shuts it in: the gauge is right about the pressure, and the page says what is under it to whoever sees truth.</summary>
    [Fact]
    public void Look_StarvedWithAirShutIn_ThePageSaysSo()
    {
        SessionStart start = new(null, "bet, forward alone in use", 1, 0);
        using LiveSession session = LiveSession.Begin(Shelves.Curlew.PlanOf(start), start, _clock, null, [])!;
        LiveGauge gauge = session.Gauges.First(g => g.Name == "fuel pressure gauge");
        Assert.Null(session.Gauges.First(g => g.Name == "cab fuel gauge").Air);
        Assert.DoesNotContain("% air", LiveChart.Gauge(gauge, session.Current, truth: true), StringComparison.Ordinal);
        session.SetPace(Pace.Sixty);
        for (int i = 0; i < 80; i++)
        {
            _clock.Pass(0.5);
            session.Look();
        }

        GaugeLook look = session.Current.Gauges[gauge.Number];
        Assert.Equal("stopped", session.Current.Positions["engine"]);
        Assert.InRange(look.Reading!.Value, gauge.NormalFrom!.Value, gauge.NormalTo!.Value);
        Assert.True(look.Air > 0.3);
        Assert.Contains("% air", LiveChart.Gauge(gauge, session.Current, truth: true), StringComparison.Ordinal);
        Assert.DoesNotContain("% air", LiveChart.Gauge(gauge, session.Current, truth: false), StringComparison.Ordinal);
    }

    [Fact]
    public void Look_Held_NothingMoves()
    {
        using LiveSession session = Begin();
        MachineSnapshot before = session.Current;
        _clock.Pass(0.5);
        session.Look();
        Assert.Same(before, session.Current);
    }

    [Fact]
    public void Look_TenTimesASecondOrOnce_SameHash()
    {
        ulong Looked(int looks)
        {
            using LiveSession session = Begin();
            session.SetPace(Pace.Sixty);
            for (int i = 0; i < 20; i++)
            {
                for (int k = 0; k < looks; k++)
                {
                    _clock.Pass(0.5 / looks);
                    session.Look();
                }
            }

            return session.Close();
        }

        Assert.Equal(Looked(1), Looked(5));
    }

    public static TheoryData<string> Scenes => [.. Scene.All.Select(s => s.Situation)];

    /// <summary>Operated live at changing paces, done again from its record, and run with the same actions without any page: bit for bit the same.</summary>
    [Theory]
    [MemberData(nameof(Scenes))]
    public void Close_LiveReplayedAndHeadless_SameHash(string situation)
    {
        Scene scene = Scene.Of(situation);
        SessionStart start = new(null, situation, 1, scene.Number);
        Plan plan = Shelves.Curlew.PlanOf(start);
        string path = Path.Combine(_folder, "live.jsonl");
        ulong live;
        using (RecordFile file = RecordFile.Create(path, new(RecordHeader.CurrentFormat, "Curlew", Shelves.Curlew.Hash, start)))
        using (LiveSession session = LiveSession.Begin(plan, start, _clock, file, [])!)
        {
            foreach ((double at, string item, string position) in scene.Deeds)
            {
                PassTo(session, at);
                Assert.Null(session.Do(new WorldAction.Operate(-1, item, position)));
            }

            PassTo(session, scene.Seconds);
            live = session.Close();
        }

        SessionRecord record = SessionRecord.Read(File.ReadAllBytes(path), out _)!;
        Assert.Equal($"{live:x16}", record.Hash);
        Assert.Equal(scene.Deeds.Length, record.Lines.Count(l => l.Do is not null));
        Assert.Equal(live, Replay.Hash(plan, record));
        using LaneBank bank = new(plan);
        World.World headless = new(bank, 5);
        Assert.True(Replay.Begin(headless, start, []));
        foreach (RecordLine line in record.Lines.Where(l => l.Do is not null))
        {
            headless.Do(line.Do!, new(line.At));
        }

        headless.RunTo(new(record.End));
        headless.CutHere();
        Assert.Equal(live, headless.Hash);
    }

    [Fact]
    public void Do_ValveClosedWhileHeld_IsSeenAtOnceAndFlowStops()
    {
        using LiveSession session = Begin();
        session.SetPace(Pace.Fifteen);
        Pass(session, 20);
        session.SetPace(Pace.Hold);
        Assert.True(Math.Abs(session.Current.Diagram.Flows["forward supply valve"]) > 1e-7);
        Assert.Null(session.Do(new WorldAction.Operate(-1, "forward supply valve", "closed")));
        Assert.Equal(0, session.Current.Diagram.Openings["forward supply valve"]);
        Assert.Equal(0, session.Current.Diagram.Flows["forward supply valve"], 1e-9);
        Assert.Equal("closed", session.Current.Positions["forward supply valve"]);
    }

    [Fact]
    public void Do_LeakPutInAndTakenOut_LevelFallsThenStands()
    {
        using LiveSession session = LiveSession.Begin(Shelves.Curlew.PlanOf("4101"), new("4101", "idle, nothing wrong", 1, 0), _clock, null, new DiagnosticList())!;
        Assert.Null(session.Do(new WorldAction.PutIn("aft compartment", "leak", ImmutableSortedDictionary.Create<string, double>().Add("diameter", 0.03))));
        Assert.Contains(new PresentFault("aft compartment", "leak"), session.Current.Faults);
        session.SetPace(Pace.Sixty);
        Pass(session, 50);
        Assert.Equal("leak, 30 mm", session.Current.Diagram.Leaks["aft compartment"].Text.Replace('\u202F', ' '));
        int ground = session.Gauges.Single(g => g is { Name: "on the ground", System: "fuel" }).Number;
        double? spilled = session.Current.Gauges[ground].Truth;
        Assert.True(spilled > 0.1, $"{spilled} m³");
        Assert.Null(session.Do(new WorldAction.TakeOut("aft compartment", "leak")));
        double? then = session.Current.Gauges[ground].Truth;
        Pass(session, 20);
        Assert.Equal(then!.Value, session.Current.Gauges[ground].Truth!.Value, 1e-5);
        Assert.Empty(session.Current.Faults);
    }

    /// <summary>A number by which something is called must be one that calls something: of 27 wires none is the 900th.</summary>
    [Fact]
    public void Do_FaultOfAPinThatIsNotThere_IsRefusedWithThoseThatAre()
    {
        SessionStart start = new("4101", "second machine without sand", 1, 0);
        using LiveSession session = LiveSession.Begin(Shelves.Curlew.PlanOf(start), start, _clock, null, new DiagnosticList())!;
        string? refused = session.Do(new WorldAction.PutIn("control line jumper at the rear", "open pin", ImmutableSortedDictionary.Create<string, double>().Add("pin", 900)));
        Assert.Contains("900", refused, StringComparison.Ordinal);
        Assert.Contains("23", refused, StringComparison.Ordinal);
        Assert.Null(session.Do(new WorldAction.PutIn("control line jumper at the rear", "open pin", ImmutableSortedDictionary.Create<string, double>().Add("pin", 23))));
    }

    [Theory]
    [InlineData("no such valve", "open", "cannot be operated")]
    [InlineData("aft supply valve", "ajar", "has no position")]
    public void Do_WhatCannotBe_IsRefusedAndNotRecorded(string item, string position, string why)
    {
        string path = Path.Combine(_folder, "r.jsonl");
        using (LiveSession session = Begin(path))
        {
            Assert.Contains(why, session.Do(new WorldAction.Operate(-1, item, position)), StringComparison.Ordinal);
        }

        Assert.Empty(SessionRecord.Read(File.ReadAllBytes(path), out _)!.Lines);
    }

    [Fact]
    public void Do_Acknowledged_StandsOnDiskAlready()
    {
        string path = Path.Combine(_folder, "r.jsonl");
        using LiveSession session = Begin(path);
        WorldAction action = new WorldAction.Operate(-1, "aft return valve", "closed");
        Assert.Null(session.Do(action));
        using FileStream other = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        byte[] bytes = new byte[other.Length];
        other.ReadExactly(bytes);
        Assert.Equal(action, Assert.Single(SessionRecord.Read(bytes, out _)!.Lines).Do);
    }

    [Fact]
    public void Restore_AfterALongRun_ShowsWhatWasShown()
    {
        string path = Path.Combine(_folder, "r.jsonl");
        MachineSnapshot last;
        using (LiveSession session = Begin(path))
        {
            session.SetPace(Pace.Sixty);
            Pass(session, 100);
            session.Do(new WorldAction.Operate(-1, "centre supply valve", "closed"));
            Pass(session, 100);
            session.SetPace(Pace.Hold);
            last = session.Current;
        }

        using RecordFile file = RecordFile.Open(path, out SessionRecord? record)!;
        using LiveSession again = LiveSession.Restore(Shelves.Curlew.PlanOf("4101"), record!, _clock, file, new DiagnosticList())!;
        Assert.Equal(last.Now, again.Current.Now);
        Assert.Equal(last.Gauges.AsEnumerable(), again.Current.Gauges);
        Assert.Equal(last.Positions.AsEnumerable(), again.Current.Positions);
        Assert.Equal(last.Journal.Select(Shown), again.Current.Journal.Select(Shown));
        Assert.Equal(Pace.Hold, again.Pace);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>An entry as it is read: its sentence is said anew each time.</summary>
    private static (SimTime Time, JournalKind Kind, string Text, int Step) Shown(JournalEntry e) => (e.Time, e.Kind, e.Text, e.Step);

    private LiveSession Begin(string? path = null)
    {
        RecordFile? file = path is null ? null : RecordFile.Create(path, new(RecordHeader.CurrentFormat, "Curlew", Shelves.Curlew.Hash, Shelves.Leak));
        return LiveSession.Begin(Shelves.Curlew.PlanOf("4101"), Shelves.Leak, _clock, file, new DiagnosticList())!;
    }

    /// <summary>Looked at in uneven beats, by turns as fast as it goes and at the pace of the clock.</summary>
    private void PassTo(LiveSession session, double seconds)
    {
        for (int i = 0; session.Current.Now.Seconds < seconds; i++)
        {
            session.SetPace(i % 8 == 7 ? Pace.Real : Pace.Sixty);
            _clock.Pass(i % 3 == 0 ? 0.03 : 0.11);
            session.Look();
        }
    }

    private void Pass(LiveSession session, int beats)
    {
        for (int i = 0; i < beats; i++)
        {
            _clock.Pass(0.1);
            session.Look();
        }
    }
}
