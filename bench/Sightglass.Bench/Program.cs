using System.Globalization;
using Sightglass.Bench;

// Each verb writes its report to bench/results; the first number is that of rounds, or the most that is tried.
BenchVerb[] verbs =
[
    new("kernel", "[ROUNDS]   the kernel against the baseline integrator, interleaved, in one run", (r, n) => KernelBench.Run(new Baseline(Paths.Output), r, rounds: n.Or(9))),
    new("trials", "[ROUNDS] [CASES]   how fast a card is tried, and a case against the bare kernel", (r, n) => TrialsBench.Run(r, rounds: n.Or(9), cases: n.Or(512, at: 1))),
    new("trains", "[ROUNDS]   the demo's machine alone and with 7 to 199 coaches: simulated seconds a second", (r, n) => TrainsBench.Run(r, rounds: n.Or(5))),
    new("shares", "[ROUNDS]   18 vehicles with every system alive: simulated seconds a second, and the share of each system", (r, n) => SharesBench.Run(r, rounds: n.Or(5))),
    new("resolvers", "[ROUNDS]   what has no memory: control line, load flow, springs, solutions a second", (r, n) => ResolversBench.Run(r, rounds: n.Or(15))),
    new("rooms", "[MOST]   live drills at once that two cores hold, and the memory of one", (r, n) => RoomsBench.Run(r, most: n.Or(6400))),
    new("browsers", "[MOST]   trainees' pages at once: how late, how many bytes a second", (r, n) => BrowsersBench.RunAsync(r, most: n.Or(360))),
    new("pages", "[ROUNDS]   first load of each page and the time until it answers, the processor slowed six times", (r, n) => PagesBench.RunAsync(r, rounds: n.Or(3))),
    new("start", "[ROUNDS]    the command line from a standing start", (r, n) => StartBench.Run(r, rounds: n.Or(9))),
];
string name = args.Length > 0 ? args[0] : "help";
if (verbs.FirstOrDefault(v => v.Name == name) is { } verb)
{
    using Report report = Report.For(verb.Name);
    await verb.Run(report, new([.. args.Skip(1).Select(a => int.Parse(a, CultureInfo.InvariantCulture))]));
    return 0;
}

// What other benches call, and what bench/same-outcomes asks for.
if (name == "iterations")
{
    Console.WriteLine(string.Join(' ', WidthBench.Measure().Select(m => m.ToString(CultureInfo.InvariantCulture))));
    return 0;
}

if (name == "chain")
{
    foreach (int stores in args.Skip(1).Select(int.Parse))
    {
        Console.WriteLine($"{stores} {ChainBench.Measure(stores)}");
    }

    return 0;
}

foreach (BenchVerb known in verbs)
{
    Console.Error.WriteLine($"bench/run {known.Name} {known.Says}");
}

return 2;
