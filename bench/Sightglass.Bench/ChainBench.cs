using System.Globalization;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Laws.Gas;
using Sightglass.Network.Stores;

namespace Sightglass.Bench;

/// <summary>What a network costs to build and to run by its size: a line of air volumes fed at one end, a boundary of its own for a leak at each.</summary>
internal static class ChainBench
{
    private const double Temperature = 293;
    private const double Filled = 6e5;

    public static void Run(Report report)
    {
        report.Section("Cost by number of stores, each with a boundary of its own to leak into");
        report.Header("stores", "places of the matrix", "ms to build", "µs an iteration of eight lanes", "µs an iteration and store");
        foreach (int stores in new[] { 100, 1000, 4000 })
        {
            (int places, double build, double iteration) = Measure(stores);
            report.Row(
                [.. new[] { stores, places }.Select(i => i.ToString(CultureInfo.InvariantCulture)), F(build * 1e3, "0.0"), F(iteration * 1e6, "0.0"), F(iteration * 1e6 / stores, "0.000")]);
        }
    }

    /// <summary>Seconds, the least of several tries.</summary>
    public static (int Places, double Build, double Iteration) Measure(int stores)
    {
        (Topology topology, Input[] leaks) = Build(stores);
        double build = double.MaxValue;
        for (int i = 0; i < 3; i++)
        {
            double start = ProcessorTime.Now;
            Build(stores);
            build = Math.Min(build, ProcessorTime.Now - start);
        }

        using LaneGroup group = new(topology);
        for (int lane = 0; lane < 8; lane++)
        {
            group.SetInput(lane, leaks[lane * stores / 8], 1);
        }

        double iteration = double.MaxValue;
        int most = 20000 / stores;
        for (int i = 0; i < 12; i++)
        {
            double start = ProcessorTime.Now;
            int done = 0;
            for (; done < most; done++)
            {
                for (int lane = 0; lane < 8; lane++)
                {
                    if (group.Task(lane) != LaneTask.None) continue;
                    if (!group.HasFailed(lane) && group.PendingEnd(lane) != Basics.Time.SimTime.Never) group.Commit(lane);
                    group.Propose(lane);
                }

                group.Iterate();
            }

            iteration = Math.Min(iteration, (ProcessorTime.Now - start) / done);
        }

        return (topology.FactoredValues, build, iteration);
    }

    private static (Topology Topology, Input[] Leaks) Build(int stores)
    {
        NetworkBuilder b = new();
        Input open = b.AddInput(1);
        Input[] leaks = new Input[stores];
        double[] sheet = LinearStore.IsothermalGas(0.01, Temperature);
        double[] hose = GasOrifice.ParametersOf(0.8, 5e-4, Temperature);
        double[] hole = GasOrifice.ParametersOf(0.8, 3e-6, Temperature);
        Amount before = b.AddBoundary<FixedStore>("feed", [Filled]).First;
        for (int i = 0; i < stores; i++)
        {
            Amount store = b.AddStore<LinearStore>($"store {i}", sheet, [Filled * sheet[2]], [1e6]).First;
            Amount outside = b.AddBoundary<FixedStore>($"leak {i}", [Physical.Atmosphere]).First;
            leaks[i] = b.AddInput(0);
            b.AddPath<GasPassage>($"hose {i}", [before, store], [new(before, store)], hose, [open]);
            b.AddPath<GasPassage>($"hole {i}", [store, outside], [new(store, outside)], hole, [leaks[i]]);
            before = store;
        }

        return (b.Build(), leaks);
    }

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
