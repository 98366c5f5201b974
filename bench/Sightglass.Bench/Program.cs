using Sightglass.Bench;

string verb = args.Length > 0 ? args[0] : "help";
switch (verb)
{
    case "kernel":
        using (Report report = Report.For("kernel"))
        {
            KernelBench.Run(new Baseline(Paths.Output), report, rounds: args.Length > 1 ? int.Parse(args[1]) : 9);
        }

        return 0;
    case "trials":
        using (Report report = Report.For("trials"))
        {
            TrialsBench.Run(report, rounds: args.Length > 1 ? int.Parse(args[1]) : 9, cases: args.Length > 2 ? int.Parse(args[2]) : 512);
        }

        return 0;
    case "trains":
        using (Report report = Report.For("trains"))
        {
            TrainsBench.Run(report, rounds: args.Length > 1 ? int.Parse(args[1]) : 5);
        }

        return 0;
    case "shares":
        using (Report report = Report.For("shares"))
        {
            SharesBench.Run(report, rounds: args.Length > 1 ? int.Parse(args[1]) : 5);
        }

        return 0;
    case "resolvers":
        using (Report report = Report.For("resolvers"))
        {
            ResolversBench.Run(report, rounds: args.Length > 1 ? int.Parse(args[1]) : 15);
        }

        return 0;
    case "rooms":
        using (Report report = Report.For("rooms"))
        {
            RoomsBench.Run(report, most: args.Length > 1 ? int.Parse(args[1]) : 6400);
        }

        return 0;
    case "start":
        using (Report report = Report.For("start"))
        {
            StartBench.Run(report, rounds: args.Length > 1 ? int.Parse(args[1]) : 9);
        }

        return 0;
    case "iterations":
        Console.WriteLine(string.Join(' ', WidthBench.Measure().Select(m => m.ToString(System.Globalization.CultureInfo.InvariantCulture))));
        return 0;
    case "chain":
        foreach (int stores in args.Skip(1).Select(int.Parse))
        {
            Console.WriteLine($"{stores} {ChainBench.Measure(stores)}");
        }

        return 0;
    default:
        Console.Error.WriteLine("bench/run kernel [ROUNDS]   the kernel against the baseline integrator, interleaved, in one run");
        Console.Error.WriteLine("bench/run trials [ROUNDS] [CASES]   how fast a card is tried, and a case against the bare kernel");
        Console.Error.WriteLine("bench/run trains [ROUNDS]   the demo's machine alone and with 7 to 199 coaches: simulated seconds a second");
        Console.Error.WriteLine("bench/run shares [ROUNDS]   18 vehicles with every system alive: simulated seconds a second, and the share of each system");
        Console.Error.WriteLine("bench/run resolvers [ROUNDS]   what has no memory: control line, load flow, springs, solutions a second");
        Console.Error.WriteLine("bench/run rooms [MOST]   live drills at once that two cores hold, and the memory of one");
        Console.Error.WriteLine("bench/run start [ROUNDS]    the command line from a standing start");
        return 2;
}
