using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Network.Groups;
using Sightglass.Reference.Tests.Networks;
using Sightglass.Reference.Tests.Runs;

namespace Sightglass.Bench;

/// <summary>The kernel against the baseline on the reference problems.</summary>
internal static class KernelBench
{
    private const double RelativeTolerance = 1e-5;

    /// <summary>What the kernel is asked for where times are compared: its error is then about the baseline's at 1e-5 (see 'Error against time').</summary>
    public const double EqualAccuracy = 6e-5;
    private const int Scenarios = 64;

    public static void Run(Baseline baseline, Report report, int rounds)
    {
        report.Section("Time per scenario, kernel in lanes ÷ baseline");
        report.Line($"{Scenarios} scenarios a round at equal accuracy (baseline rtol 1e-5, tuned with NLC = 0.01; kernel rtol {EqualAccuracy:0.#e0}, see below), one core each, processor time; medians (least…greatest) of {rounds} interleaved rounds.");
        report.Line();
        report.Header("problem", "kernel, µs", "÷ baseline with Debian's libraries", "÷ baseline rebuilt for this machine", "µs an iteration of eight lanes", "bytes allocated a scenario");
        foreach (string area in new[] { "train", "fuel" })
        {
            Compare(baseline, report, area, rounds);
        }

        Curves(baseline, report);
        Idle(report);
        Scaling(report);
        ChainBench.Run(report);
        WidthBench.Run(report);
    }

    private static void Compare(Baseline baseline, Report report, string area, int rounds)
    {
        ReferenceNetwork network = ReferenceNetwork.Of(ReferenceData.Net(area, area + "-00"));
        using ReferenceRun run = new(network, EqualAccuracy);
        string problem = Paths.Problem(area, area + "-00");
        _ = Time(network, run, 5 * Scenarios);
        Ratios debian = new();
        Ratios native = new();
        List<KernelTime> times = [];
        for (int i = 0; i < rounds; i++)
        {
            times.Add(Time(network, run, Scenarios));
            debian.Add(times[^1].Seconds, Mean(Baseline.Debian));
            times.Add(Time(network, run, Scenarios));
            native.Add(times[^1].Seconds, Mean(Baseline.Native));
        }

        KernelTime median = times.OrderBy(t => t.Seconds).ElementAt(times.Count / 2);
        report.Row(area, F(median.Seconds * 1e6, "0.0"), debian.ToString(), native.ToString(), F(median.SecondsPerIteration * 1e6, "0.00"), F(median.Bytes, "0"));

        double Mean(string variant) =>
            Enumerable.Range(0, Scenarios).Where(lane => lane % 8 == 0).Average(lane => baseline.Time(variant, problem, lane, RelativeTolerance, 3).Seconds);
    }

    private static KernelTime Time(ReferenceNetwork network, ReferenceRun run, int scenarios)
    {
        long iterations = run.Iterations;
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        double start = ProcessorTime.Now;
        run.Run(scenarios, (lane, scenario) => LaneVariation.Apply(network, run.Group, lane, scenario));
        double seconds = ProcessorTime.Now - start;
        return new(seconds / scenarios, seconds / (run.Iterations - iterations), (GC.GetAllocatedBytesForCurrentThread() - bytes) / (double)scenarios);
    }

    private static void Curves(Baseline baseline, Report report)
    {
        report.Section("Error against time");
        report.Line("One scenario of each problem against its reference solution. Times of the kernel: eight lanes of it, per lane; of the baseline: rebuilt for this machine. Event: largest error of a switch's moment.");
        report.Line();
        report.Header("problem", "rtol", "kernel rms", "worst", "event, ms", "steps", "µs", "baseline rms", "worst", "event, ms", "steps", "µs");
        foreach (string area in new[] { "train", "fuel" })
        {
            ReferenceNetwork network = ReferenceNetwork.Of(ReferenceData.Net(area, area + "-00"));
            SampleTable solution = ReferenceData.Solution(area, area + "-00");
            string problem = Paths.Problem(area, area + "-00");
            double[] events = baseline.Sample(Baseline.Native, problem, 1e-10).Result.Firings;
            foreach (double tolerance in new[] { 1e-3, 1e-4, 1e-5, 1e-6, 1e-7 })
            {
                using ReferenceRun run = new(network, tolerance);
                ReferenceComparison ours = ReferenceComparison.Between(solution, run.Sample());
                string ourEvents = EventError(events, run.Firings);
                long steps = run.Group.Steps(0);
                run.Run(32);
                double seconds = TimeOf(() => run.Run(64)) / 64;
                (BaselineResult result, double[] values) = baseline.Sample(Baseline.Native, problem, tolerance);
                ReferenceComparison theirs = ReferenceComparison.Between(solution, Table(values, solution.Columns.Length));
                BaselineResult timed = baseline.Time(Baseline.Native, problem, 0, tolerance, 7);
                report.Row(
                    area, F(tolerance, "0e-0"), F(ours.Rms, "0.0e-0"), F(ours.Worst, "0.0e-0"), ourEvents, steps.ToString(CultureInfo.InvariantCulture), F(seconds * 1e6, "0"),
                    F(theirs.Rms, "0.0e-0"), F(theirs.Worst, "0.0e-0"), EventError(events, result.Firings), timed.Steps.ToString(CultureInfo.InvariantCulture), F(timed.Seconds * 1e6, "0"));
            }
        }
    }

    private static void Idle(Report report)
    {
        report.Section("An idle plant");
        report.Header("problem", "hours", "steps", "attempts");
        NetFile file = ReferenceData.Net("fuel", "fuel-00");
        foreach (double hours in new[] { 10.0, 100.0 })
        {
            NetFile idle = file with { Schedule = [], End = hours * 3600 };
            using ReferenceRun run = new(ReferenceNetwork.Of(idle), RelativeTolerance);
            run.Run(1);
            report.Row("fuel, constant consumption", F(hours, "0"), run.Group.Steps(0).ToString(CultureInfo.InvariantCulture), run.Group.Attempts(0).ToString(CultureInfo.InvariantCulture));
        }
    }

    private static void Scaling(Report report)
    {
        report.Section("Cost by length of train");
        report.Header("cars", "stores", "places of the matrix", "µs an iteration of eight lanes", "µs an iteration and car");
        foreach (int cars in new[] { 10, 50, 100, 200 })
        {
            NetFile file = ReferenceData.Net("scaling", $"train-{cars}-cars") with { End = 60, Schedule = [] };
            ReferenceNetwork network = ReferenceNetwork.Of(file);
            using ReferenceRun run = new(network, RelativeTolerance);
            run.Run(16);
            KernelTime time = Time(network, run, 8);
            report.Row(
                F(cars, "0"), F(file.Nodes.Length, "0"), F(network.Topology.FactoredValues, "0"), F(time.SecondsPerIteration * 1e6, "0.0"), F(time.SecondsPerIteration * 1e6 / cars, "0.000"));
        }
    }

    private static double TimeOf(Action work)
    {
        double start = ProcessorTime.Now;
        work();
        return ProcessorTime.Now - start;
    }

    private static ImmutableArray<ImmutableArray<double>> Table(double[] values, int columns) =>
        [.. values.Chunk(columns).Select(row => row.ToImmutableArray())];

    private static string EventError(double[] expected, IReadOnlyList<double> found) =>
        expected.Length == 0 ? "–"
        : found.Count < expected.Length ? "missed"
        : F(1e3 * expected.Zip(found, (e, f) => Math.Abs(e - f)).Max(), "0.000");

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
