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
    default:
        Console.Error.WriteLine("bench/run kernel [ROUNDS]   the kernel against the baseline integrator, interleaved, in one run");
        return 2;
}
