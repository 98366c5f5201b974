using System.Diagnostics;
using System.Globalization;
using Sightglass.Reference.Tests.Networks;
using Sightglass.Reference.Tests.Runs;

namespace Sightglass.Bench;

/// <summary>What an iteration costs with all lanes at work and with one, and without the widest vectors.</summary>
internal static class WidthBench
{
    /// <summary>How long one iteration takes, µs: train in eight lanes and in one, fuel in eight and in one. The least of several tries.</summary>
    public static double[] Measure() => [.. new[] { "train", "fuel" }.SelectMany(area => new[] { 8, 1 }.Select(lanes => Least(area, lanes) * 1e6))];

    public static void Run(Report report)
    {
        report.Section("Lanes at work, width of vectors");
        report.Line("µs an iteration, least of several tries in a process of its own. One lane: as in a live session.");
        report.Line();
        report.Header("vectors", "train, eight lanes", "train, one", "fuel, eight lanes", "fuel, one");
        report.Row(["512 bits", .. Child()]);
        report.Row(["256 bits (DOTNET_EnableAVX512=0)", .. Child("DOTNET_EnableAVX512")]);
    }

    private static double Least(string area, int lanes)
    {
        using ReferenceRun run = new(ReferenceNetwork.Of(ReferenceData.Net(area, area + "-00")), KernelBench.EqualAccuracy);
        run.Run(5 * lanes);
        double least = double.MaxValue;
        for (int i = 0; i < 25; i++)
        {
            long iterations = run.Iterations;
            double start = ProcessorTime.Now;
            run.Run(lanes);
            least = Math.Min(least, (ProcessorTime.Now - start) / (run.Iterations - iterations));
        }

        return least;
    }

    private static string[] Child(string? switchedOff = null)
    {
        ProcessStartInfo start = new(Environment.ProcessPath!) { RedirectStandardOutput = true, ArgumentList = { "iterations" } };
        if (switchedOff is not null) start.Environment[switchedOff] = "0";
        using Process process = Process.Start(start)!;
        string[] figures = process.StandardOutput.ReadToEnd().Split(' ', StringSplitOptions.TrimEntries);
        process.WaitForExit();
        return [.. figures.Select(f => double.Parse(f, CultureInfo.InvariantCulture).ToString("0.00", CultureInfo.InvariantCulture))];
    }
}
