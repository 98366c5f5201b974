using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Web.Room;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Bench;

/// <summary>How many drills live at once: each is looked at ten times a second in real time, somebody walks and operates in it now and then, and all of them share the machine's cores.</summary>
internal static class RoomsBench
{
    private const int Cars = 8;
    private const string Short = "local train";
    private const double Beat = 0.1;

    /// <summary>Drills beat in turn, as those of a room do.</summary>
    private const int Phases = 10;

    private const double Late = 0.05;
    private const double Seconds = 8;

    /// <summary>Simulated seconds before it is measured: a train that is just put there comes to rest first.</summary>
    private const double Settled = 60;

    private static readonly int[] s_watched = [100, 300, 600];
    private static readonly int[] s_alone = [300, 3000];

    /// <summary>Share of the looks that must be in time.</summary>
    private const double Share = 0.99;

    public static void Run(Report report, int most)
    {
        BoundDrill drill = Bind();
        foreach (DrillSession warm in Begin(drill, 4, watched: true))
        {
            Live([warm]);
            warm.Dispose();
        }

        Table(report, drill, most, watched: true);
        Table(report, drill, most, watched: false);
    }

    private static DrillSession[] Begin(BoundDrill drill, int count, bool watched)
    {
        DrillSession[] sessions = new DrillSession[count];
        Parallel.For(0, count, i =>
        {
            sessions[i] = DrillSession.Begin(drill, DrillReplay.StartOf(drill, 1, (ulong)i), TimeProvider.System, null, [])!;
            sessions[i].Watched = watched ? [drill.Person] : [];
        });
        return sessions;
    }

    private static void Table(Report report, BoundDrill drill, int most, bool watched)
    {
        report.Section(FormattableString.Invariant($"Live drills, the whole locomotive and {Cars} cars, {(watched ? "looked at by the trainee" : "with nobody looking")}"));
        report.Line(FormattableString.Invariant($"Each goes on every {Beat} s for {Seconds} s{(watched ? ", with all that the trainee sees" : "")}, journal and evaluation as it falls. In time: done within {Late * 1000:0} ms of its moment."));
        report.Line();
        report.Header("drills", "looks in time", "latest, ms", "collector stops all, ms (longest)", "processor, of one core", "of a look, microseconds", "memory a drill, kB");
        int[] counts = watched ? s_watched : s_alone;
        foreach (int count in counts.TakeWhile(c => c <= most))
        {
            long before = GC.GetTotalMemory(forceFullCollection: true);
            DrillSession[] sessions = Begin(drill, count, watched);
            long memory = (GC.GetTotalMemory(forceFullCollection: true) - before) / count;
            Parallel.ForEach(sessions, session =>
            {
                session.Forward(SimTime.FromSeconds(Settled));
                session.Release(HoldReason.Brief);
            });

            (double inTime, double busy, double latest, (double All, double Longest) stops) = Live(sessions);
            report.Row(F(count, "0"), $"{F(100 * inTime, "0.0")} %", F(1000 * latest, "0"), $"{F(1000 * stops.All, "0")} ({F(1000 * stops.Longest, "0")})", F(busy, "0.00"), F(busy * Beat / count * 1e6, "0"), F(memory / 1024.0, "0"));
            foreach (DrillSession session in sessions)
            {
                session.Dispose();
            }

            if (inTime < Share)
            {
                break;
            }
        }
    }

    private static (double InTime, double Busy, double Latest, (double All, double Longest) Stops) Live(DrillSession[] sessions)
    {
        string[] places = [.. sessions[0].Plan.Book.Places.Keys];
        int steps = (int)(Seconds / Beat * Phases);
        int person = sessions[0].Drill.Person;
        int late = 0;
        (double latest, double longest) = (0, 0);
        DrillSession[][] phases = [.. Enumerable.Range(0, Phases).Select(p => sessions.Where((_, i) => i % Phases == p).ToArray())];
        TimeSpan busy = Process.GetCurrentProcess().TotalProcessorTime;
        TimeSpan stopped = GC.GetTotalPauseDuration();
        TimeSpan before = stopped;
        Stopwatch wall = Stopwatch.StartNew();
        for (int step = 0; step < steps; step++)
        {
            (int beat, DrillSession[] due) = (step / Phases, phases[step % Phases]);
            double at = step * Beat / Phases;
            double wait = at - wall.Elapsed.TotalSeconds;
            if (wait > 0)
            {
                Thread.Sleep(TimeSpan.FromSeconds(wait));
            }

            Parallel.For(0, due.Length, i =>
            {
                // One in forty begins to walk or puts a hand to something.
                if ((beat + i) % 40 == 0)
                {
                    _ = due[i].Act(new WorldAction.Walk(person, places[(beat + (7 * i)) % places.Length]));
                }

                due[i].Beat();
                if (wall.Elapsed.TotalSeconds - at > Late)
                {
                    Interlocked.Increment(ref late);
                }
            });
            latest = Math.Max(latest, wall.Elapsed.TotalSeconds - at);
            longest = Math.Max(longest, (GC.GetTotalPauseDuration() - before).TotalSeconds);
            before = GC.GetTotalPauseDuration();
        }

        double used = (Process.GetCurrentProcess().TotalProcessorTime - busy).TotalSeconds;
        return (1 - ((double)late / ((long)(steps / Phases) * sessions.Length)), used / wall.Elapsed.TotalSeconds, latest, ((GC.GetTotalPauseDuration() - stopped).TotalSeconds, longest));
    }

    /// <summary>A drill of the demo with a longer train.</summary>
    private static BoundDrill Bind()
    {
        DiagnosticList found = [];
        ClassBook book = BookReader.Read(Path.Combine(Paths.Root, "books", "curlew"), KindLibrary.Catalog, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        Train train = book.Trains[Short];
        ImmutableArray<TrainVehicle> longer = [new(TrainVehicle.ThisMachine, false, Span.None), .. Enumerable.Repeat(new TrainVehicle("coach", false, Span.None), Cars)];
        ClassBook served = book with { Trains = book.Trains.SetItem(Short, train with { Vehicles = longer }) };
        Fleet fleet = Fleet.Compile(served, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        return new DrillVariants(fleet, served.Drills["light the train"]).For(new CaseDraws(1, 0), found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
