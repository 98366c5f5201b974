using System.Diagnostics;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.Trials;
using Sightglass.Trials.Sweep;
using Sightglass.World.Situations;

namespace Sightglass.Bench;

/// <summary>How fast a card is tried.</summary>
internal static class TrialsBench
{
    private const string CardFile = "empty-a-leaking-compartment";
    private const string Situation = "leaking compartment";

    public static void Run(Report report, int rounds, int cases)
    {
        TrialSetup setup = Setup();
        BesideAir(report, setup, rounds, cases);
        SweepOptions one = new() { Cases = cases, Threads = 1 };
        SweepOptions two = one with { Threads = 2 };
        Plan plan = setup.Machines[0].Plan;
        FixedSchedule[][] schedules = [.. Enumerable.Range(0, cases).Select(k => FixedSchedule.Record(setup, one.Seed, k))];
        BareReplay[] bare = [.. plan.Stepped.Select((n, i) => new BareReplay(plan.Networks[n], setup.RelativeTolerance, [.. schedules.Select(s => s[i])]))];
        Array.ForEach(bare, b => b.Run());
        CaseSweep.Run(setup, one);
        CaseSweep.Run(setup, two);
        Ratios ratios = new();
        List<double> oneThread = [];
        List<double> twoThreads = [];
        List<double> kernel = [];
        for (int i = 0; i < rounds; i++)
        {
            oneThread.Add(ProcessorSeconds(() => CaseSweep.Run(setup, one)));
            kernel.Add(ProcessorSeconds(() => Array.ForEach(bare, b => b.Run())));
            ratios.Add(oneThread[^1], kernel[^1]);
            twoThreads.Add(Seconds(() => CaseSweep.Run(setup, two)));
        }

        report.Section($"The card `{CardFile}` in `{Situation}`");
        report.Line($"{cases} cases a round; medians (best) of {rounds} interleaved rounds, processor time but for two threads. The bare kernel replays the same cases' changes of inputs as a fixed schedule, in lanes, on the same plan, one network after the other.");
        report.Line();
        report.Header("what", "cases per second", "µs a case");
        Row("one thread", oneThread);
        Row("two threads", twoThreads);
        Row("the bare kernel, one thread", kernel);
        report.Line();
        report.Line($"- one case ÷ the same input changes on the bare kernel: {ratios}; goal ≤ 1.5");
        report.Line($"- bytes allocated a case after warm-up, one thread: {F(BytesACase(setup, one), "0.0")} (the list of outcomes is made before)");
        report.Line();
        report.Line("What the trial steps, a case; networks that stand aside go their own way until one of their inputs changes:");
        report.Line();
        report.Header("network", "stores", "changes of inputs", "attempts", "attempts of the bare kernel", "replays with the same end, bit for bit");
        for (int i = 0; i < bare.Length; i++)
        {
            int n = plan.Stepped[i];
            report.Row(
                plan.NetworkNames[n] + (plan.Seen.Contains(n) ? "" : " (aside)"),
                F(plan.Networks[n].Amounts, "0"),
                F(schedules.Average(s => s[i].Changes.Length), "0.0"),
                F(schedules.Average(s => s[i].Attempts), "0"),
                F(bare[i].Attempts / (double)(rounds + 1) / cases, "0"),
                $"{cases - (bare[i].Different / (rounds + 1))} of {cases}");
            bare[i].Dispose();
        }

        void Row(string what, List<double> seconds)
        {
            double[] sorted = [.. seconds.Order()];
            double median = sorted[sorted.Length / 2];
            report.Row(what, $"{F(cases / median, "0")} ({F(cases / sorted[0], "0")})", $"{F(1e6 * median / cases, "0.0")} ({F(1e6 * sorted[0] / cases, "0.0")})");
        }
    }

    /// <summary>What it costs a fuel card that the book has the air of a train as well: left out, as trials do, and stepped along.</summary>
    private static void BesideAir(Report report, TrialSetup alone, int rounds, int cases)
    {
        TrialSetup left = Setup(new SourceText("zz-air.yaml", "systems: { train air: { medium: brake, alive: yes } }\n" + TrainText.Items(18, "train air", "fuel panel, right", "engineer")));
        TrialSetup whole = left with { Machines = [.. left.Machines.Select(m => m with { Plan = m.Plan.Whole, Start = SituationStart.Bind(m.Plan.Whole, left.Situation, [])! })] };
        SweepOptions few = new() { Cases = Math.Min(cases, 64), Threads = 1 };
        (Ratios leftOut, Ratios stepped) = (new(), new());
        for (int i = 0; i <= rounds; i++)
        {
            double own = ProcessorSeconds(() => CaseSweep.Run(alone, few));
            double without = ProcessorSeconds(() => CaseSweep.Run(left, few));
            double with = i is 1 or 2 ? ProcessorSeconds(() => CaseSweep.Run(whole, few)) : double.NaN;
            if (i > 0)
            {
                leftOut.Add(without, own);
            }

            if (i is 1 or 2)
            {
                stepped.Add(with, own);
            }
        }

        report.Section($"The card `{CardFile}` in a book with the air of 18 cars");
        report.Line($"Times of {few.Cases} cases over those of the demo book alone, interleaved, processor time.");
        report.Line();
        report.Line($"- the air left out, since the card asks nothing about it: {leftOut}");
        report.Line($"- the air stepped along: {stepped}");
    }

    /// <summary>What the second half of a sweep allocates, a case.</summary>
    private static double BytesACase(TrialSetup setup, SweepOptions options)
    {
        (int half, long atHalf, long atEnd) = (options.Cases / 2, 0, 0);
        CaseSweep.Run(setup, options with { Progress = Note });
        return (atEnd - atHalf) / (double)(options.Cases - half);

        void Note(int done)
        {
            atHalf = done == half ? GC.GetAllocatedBytesForCurrentThread() : atHalf;
            atEnd = GC.GetAllocatedBytesForCurrentThread();
        }
    }

    private static TrialSetup Setup(params ReadOnlySpan<SourceText> more)
    {
        DiagnosticList found = [];
        string root = Path.Combine(Paths.Root, "books", "curlew");
        ClassBook? book = BookReader.Read([.. Texts(root, "*.yaml"), .. more], [.. Texts(root, "*.card")], KindLibrary.Catalog, found);
        Plan? plan = book is null ? null : PlanCompiler.Compile(book, found);
        Card? card = plan is null ? null : CardReader.Read(book!.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == CardFile), book, found);
        return card is null
            ? throw new InvalidOperationException(string.Join('\n', found))
            : TrialPreparation.Prepare(plan!, card, book!.Situations[Situation], found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static IEnumerable<SourceText> Texts(string root, string pattern) =>
        Directory.EnumerateFiles(root, pattern, SearchOption.AllDirectories).Where(f => !f.Contains("/words/", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(f => new SourceText(Path.GetRelativePath(root, f), File.ReadAllText(f)));

    /// <summary>Of this thread, which does all of the work.</summary>
    private static double ProcessorSeconds(Action work)
    {
        double start = ProcessorTime.Now;
        work();
        return ProcessorTime.Now - start;
    }

    /// <summary>By the clock on the wall, for work of several threads.</summary>
    private static double Seconds(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
