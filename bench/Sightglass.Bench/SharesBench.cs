using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Network.Groups;
using Sightglass.Network.Step;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Bench;

/// <summary>Where the time goes in a train with every system alive: each network by itself, and what lies between their steps (switches, circuits, feeders, springs, looking).</summary>
internal static class SharesBench
{
    private const string Own = "bench";
    private const int Cars = 17;

    private static readonly (string Name, double Seconds, (double At, string Item, string Position)[] Deeds)[] s_runs =
    [
        ("standing with head-end power on", 3600, [(1, "head-end power key", "on")]),
        ("an emergency application, head-end power on", 60, [(1, "head-end power key", "on"), (5, "automatic brake handle", "emergency")]),
    ];

    public static void Run(Report report, int rounds)
    {
        Plan plan = Compile();
        foreach ((string name, double seconds, (double, string, string)[] deeds) in s_runs)
        {
            List<double> whole = [];
            Dictionary<string, List<double>> shares = new(StringComparer.Ordinal);
            long steps = 0;
            for (int round = 0; round <= rounds; round++)
            {
                (double time, Dictionary<string, double> parts, steps) = Time(plan, seconds, deeds);
                if (round == 0)
                {
                    continue; // for the compiler
                }

                whole.Add(time);
                foreach ((string part, double took) in parts)
                {
                    (shares.TryGetValue(part, out List<double>? list) ? list : shares[part] = []).Add(took / time);
                }
            }

            double median = Median(whole);
            report.Section($"{char.ToUpperInvariant(name[0])}{name[1..]}, {F(seconds, "0")} s, {Cars + 1} vehicles");
            report.Line($"{F(seconds / median, "0.#")} simulated seconds a second of one core; {F(steps, "0")} steps of all networks; medians of {rounds} rounds.");
            report.Line();
            report.Header("part", "share of the time");
            foreach ((string part, List<double> list) in shares.OrderByDescending(s => Median(s.Value)))
            {
                report.Row(part, $"{F(100 * Median(list), "0.0")} %");
            }
        }
    }

    private static (double Seconds, Dictionary<string, double> Parts, long Steps) Time(Plan plan, double seconds, (double At, string Item, string Position)[] deeds)
    {
        using LaneBank bank = new(plan);
        World.World world = new(bank, 0);
        SituationStart.Bind(plan, Situation(plan), [])!.Apply(world, 1, 0);
        foreach ((double at, string item, string position) in deeds)
        {
            world.Do(new WorldAction.Operate(-1, item, position), SimTime.FromSeconds(at));
        }

        long[] took = new long[plan.Networks.Length];
        world.Limit = SimTime.FromSeconds(seconds);
        long start = Stopwatch.GetTimestamp();
        while (world.Advance())
        {
            foreach (int i in plan.Stepped)
            {
                LaneGroup group = bank.Group(i);
                if (group.Task(0) == LaneTask.None)
                {
                    continue;
                }

                long from = Stopwatch.GetTimestamp();
                while (group.Task(0) != LaneTask.None)
                {
                    group.Iterate();
                }

                took[i] += Stopwatch.GetTimestamp() - from;
            }
        }

        double whole = Stopwatch.GetElapsedTime(start).TotalSeconds;
        if (world.Trouble is { } trouble)
        {
            throw new InvalidOperationException(trouble);
        }

        Dictionary<string, double> parts = plan.Stepped.GroupBy(i => plan.NetworkNames[i]).ToDictionary(g => g.Key, g => g.Sum(i => took[i]) / (double)Stopwatch.Frequency, StringComparer.Ordinal);
        parts["between the steps: switches, circuits, feeders, springs"] = whole - parts.Values.Sum();
        return (whole, parts, world.Steps);
    }

    /// <summary>Everything coupled and open between the vehicles, shut at the end.</summary>
    private static Situation Situation(Plan plan)
    {
        string last = $"of car {Cars}";
        List<StartValue> start =
        [
            Word("throttle", "idle"), Word("independent brake handle", "full"), Word("rear brake pipe angle cock", "open"), Word("rear main reservoir angle cock", "open"),
            Word($"B brake pipe angle cock {last}", "closed"), Word($"B main reservoir angle cock {last}", "closed"),
            Pressure("pressure of rear brake pipe hose", 110), Pressure("pressure of rear main reservoir hose", 135), Pressure($"pressure of B brake pipe hose {last}", 0), Pressure($"pressure of B main reservoir hose {last}", 0),
        ];
        return new() { Name = Own, Span = Span.None, Start = [.. start.Where(s => plan.Starts.ContainsKey(s.Name))] };
    }

    private static Plan Compile()
    {
        DiagnosticList found = [];
        ClassBook book = BookReader.Read(Path.Combine(Paths.Root, "books", "curlew"), KindLibrary.Catalog, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        ImmutableArray<TrainVehicle> listed = [new(TrainVehicle.ThisMachine, false, Span.None), .. Enumerable.Repeat(new TrainVehicle("coach", false, Span.None), Cars)];
        ClassBook train = (book with { Trains = book.Trains.SetItem(Own, new(Own, Span.None, "", listed)) }).Coupled(Own);
        return PlanCompiler.Compile(train, found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static StartValue Word(string name, string word) => new(name, Span.None) { OneOf = [word] };

    private static StartValue Pressure(string name, double psi) =>
        new(name, Span.None) { From = psi * 6894.757293, To = psi * 6894.757293, Unit = Basics.Quantities.UnitTable.SiOf(Basics.Quantities.Dimension.Pressure) };

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
