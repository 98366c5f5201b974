using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Bench;

/// <summary>What the demo's machine costs with its coaches: one world, as in a live session, of all its systems.</summary>
internal static class TrainsBench
{
    private const string Own = "bench";

    private static readonly (string Name, double Seconds, bool Empty, (double At, string Item, string Position)[] Deeds)[] s_runs =
    [
        ("charged and standing", 3600, false, []),
        ("charged from empty", 120, true, []),
        ("an emergency application", 60, false, [(1, "automatic brake handle", "emergency")]),
    ];

    public static void Run(Report report, int rounds)
    {
        int[] lengths = [1, 8, 18, 50, 200];
        Train[] trains = [.. lengths.Select(Train.Of)];
        report.Line();
        report.Line($"The demo's machine alone and with its coaches behind it; one world in one lane, all systems, people nowhere. Processor time; medians of {rounds} interleaved rounds.");
        foreach ((string name, double seconds, bool empty, (double, string, string)[] deeds) in s_runs)
        {
            List<double>[] times = [.. trains.Select(_ => new List<double>())];
            long[] steps = new long[trains.Length];
            for (int round = 0; round <= rounds; round++)
            {
                for (int i = 0; i < trains.Length; i++)
                {
                    (double time, steps[i]) = trains[i].Time(seconds, empty, deeds);
                    if (round > 0)
                    {
                        times[i].Add(time); // the first round is for the compiler
                    }
                }
            }

            report.Section($"{char.ToUpperInvariant(name[0])}{name[1..]}, {F(seconds, "0")} s");
            report.Header("vehicles", "stores", "simulated seconds a second", "time ÷ the machine alone", "steps", "µs a step", "µs a step and vehicle");
            double alone = Median(times[0]);
            for (int i = 0; i < trains.Length; i++)
            {
                double median = Median(times[i]);
                double step = median * 1e6 / steps[i];
                report.Row(
                    F(lengths[i], "0"), F(trains[i].Stores, "0"), F(seconds / median, "0.#"), F(median / alone, "0.00"), F(steps[i], "0"), F(step, "0.0"), F(step / lengths[i], "0.0"));
            }
        }
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>The machine and so many coaches, everything open between them and shut at the end.</summary>
    private sealed class Train(Plan plan, int coaches)
    {
        private static readonly ClassBook s_book = Read();

        public int Stores => plan.AmountNames.Sum(n => n.Length);

        public static Train Of(int vehicles)
        {
            ImmutableArray<TrainVehicle> listed =
                [new(TrainVehicle.ThisMachine, false, Span.None), .. Enumerable.Repeat(new TrainVehicle("coach", false, Span.None), vehicles - 1)];
            ClassBook book = vehicles == 1 ? s_book : (s_book with { Trains = s_book.Trains.SetItem(Own, new(Own, Span.None, "", listed)) }).Coupled(Own);
            DiagnosticList found = [];
            return new(PlanCompiler.Compile(book, found) ?? throw new InvalidOperationException(string.Join('\n', found)), vehicles - 1);
        }

        public (double Seconds, long Steps) Time(double seconds, bool empty, (double At, string Item, string Position)[] deeds)
        {
            using LaneBank bank = new(plan);
            World.World world = new(bank, 0);
            DiagnosticList found = [];
            (SituationStart.Bind(plan, Situation(empty), found) ?? throw new InvalidOperationException(string.Join('\n', found))).Apply(world, 1, 0);
            foreach ((double at, string item, string position) in deeds)
            {
                world.Do(new WorldAction.Operate(-1, item, position), SimTime.FromSeconds(at));
            }

            double start = ProcessorTime.Now;
            world.RunTo(SimTime.FromSeconds(seconds));
            double time = ProcessorTime.Now - start;
            return world.Trouble is null ? (time, world.Steps) : throw new InvalidOperationException(world.Trouble);
        }

        private Situation Situation(bool empty)
        {
            List<StartValue> start = [Word("throttle", "idle"), Word("independent brake handle", "full")];
            if (coaches > 0)
            {
                start.AddRange([Word("rear brake pipe angle cock", "open"), Word("rear main reservoir angle cock", "open")]);
                start.AddRange([Pressure("pressure of rear brake pipe hose", 110), Pressure("pressure of rear main reservoir hose", 135)]);
                start.AddRange([Word($"B brake pipe angle cock of car {coaches}", "closed"), Word($"B main reservoir angle cock of car {coaches}", "closed")]);
                start.AddRange([Pressure($"pressure of B brake pipe hose of car {coaches}", 0), Pressure($"pressure of B main reservoir hose of car {coaches}", 0)]);
            }

            if (empty)
            {
                start.RemoveAll(s => s.OneOf.IsEmpty);
                start.AddRange(plan.Starts.Values.Where(r => r.Network >= 0 && r.Dimension == Dimension.Pressure).Select(r => Pressure(r.Name, 0)));
            }

            return new() { Name = Own, Span = Span.None, Start = [.. start] };
        }

        private static StartValue Word(string name, string word) => new(name, Span.None) { OneOf = [word] };

        private static StartValue Pressure(string name, double psi) =>
            new(name, Span.None) { From = psi * 6894.757293, To = psi * 6894.757293, Unit = UnitTable.SiOf(Dimension.Pressure) };

        private static ClassBook Read()
        {
            DiagnosticList found = [];
            return BookReader.Read(Path.Combine(Paths.Root, "books", "curlew"), KindLibrary.Catalog, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        }
    }
}
