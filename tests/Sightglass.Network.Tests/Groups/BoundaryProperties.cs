using CsCheck;
using Sightglass.Basics.Time;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Network.Laws.Liquid;
using Sightglass.Network.Stores;
using Sightglass.Network.Tests.Probes;

namespace Sightglass.Network.Tests.Groups;

/// <summary>Boundaries are not factored: each gets what its neighbours lose all the same.</summary>
public sealed class BoundaryProperties
{
    private const double Seconds = 40;

    private static readonly Gen<Case> s_cases =
        from stores in Gen.Int[1, 7]
        from starts in Gen.Double[1e5, 3e5].Array[stores]
        from capacities in Gen.Double[-6, -4].Select(e => Math.Pow(10, e)).Array[stores]
        from joins in Gen.Double[0, 1].Array[stores]
        from boundaries in Gen.Double[0.9e5, 2e5].Array[1, 3]
        from leaks in Gen.Select(Gen.Int[0, stores - 1], Gen.Int[0, boundaries.Length - 1], Gen.Double[-7, -5.5]).Array[1, 6]
        from pilots in Gen.Select(Gen.Int[0, stores - 1], Gen.Int[0, stores - 1], Gen.Int[0, boundaries.Length - 1]).Array[0, 3]
        select new Case(starts, capacities, joins, boundaries, leaks, pilots);

    /// <summary>
    /// Source: conservation of mass. Judged against all that is held and all that passes, to rounding.
    /// </summary>
    [Fact]
    public void Run_StoresLeakIntoBoundaries_SumStays() => s_cases.Holds(c =>
    {
        (double[] amounts, double[] start) = Run(c, 1e-5);
        Assert.InRange((amounts.Sum() - start.Sum()) / amounts.Concat(start).Sum(Math.Abs), -1e-12, 1e-12);
    });

    /// <summary>
    /// Source: the same laws and stores integrated by <see cref="DormandPrince"/> at 1e-10, boundaries as stores like others. The kernel, asked for a millionth of
    /// 1 bar a step, is to be within a hundred-thousandth of what moves.
    /// </summary>
    [Fact]
    public void Run_StoresLeakIntoBoundaries_EachBoundaryGetsWhatFlows() => s_cases.Holds(c =>
    {
        (double[] amounts, _) = Run(c, 1e-7);
        double[] expected = Expected(c);
        double moved = expected.Zip(amounts, (e, a) => Math.Max(Math.Abs(e), Math.Abs(a))).Max();
        foreach ((double e, double a) in expected.Zip(amounts))
        {
            Assert.InRange(a - e, -1e-5 * moved, 1e-5 * moved);
        }
    });

    private static double[] Orifice(double area) => LiquidOrifice.ParametersOf(0.62, area, 1000, 1e-4);

    /// <summary>A boundary sees a store that is not its neighbour: it gets 1e-9 kg/s for each Pa there, out of another one.</summary>
    private static readonly double[] s_pilot = [1e-9];

    private static (double[] Amounts, double[] Start) Run(Case c, double tolerance)
    {
        NetworkBuilder b = new();
        Input open = b.AddInput(1);
        Amount[] all =
        [
            .. c.Boundaries.Select((p, i) => b.AddBoundary<FixedStore>($"boundary {i}", [p]).First),
            .. c.Starts.Select((p, i) => b.AddStore<LinearStore>($"store {i}", LinearStore.ParametersOf(p, 1, c.Capacities[i]), [1], [1e5]).First),
        ];
        foreach ((int from, int to, double area) in c.Paths)
        {
            b.AddPath<LiquidOrifice>("path", [all[from], all[to]], [new(all[from], all[to])], Orifice(area), [open]);
        }

        foreach ((int pilot, int from, int to) in c.PilotPaths)
        {
            b.AddPath<DrainLaw>("piloted", [all[pilot], all[to]], [new(all[from], all[to])], s_pilot, []);
        }

        using LaneGroup group = new(b.Build(), tolerance);
        double[] start = [.. all.Select(a => group.GetAmount(3, a))];
        Rig.RunTo(group, 3, SimTime.FromSeconds(Seconds));
        return ([.. all.Select(a => group.GetAmount(3, a))], start);
    }

    private static double[] Expected(Case c)
    {
        SmallNetwork network = new();
        foreach (double p in c.Boundaries) network.Add<FixedStore>([p], 0);
        for (int i = 0; i < c.Starts.Length; i++) network.Add<LinearStore>(LinearStore.ParametersOf(c.Starts[i], 1, c.Capacities[i]), 1);
        foreach ((int from, int to, double area) in c.Paths) network.Join<LiquidOrifice>(Orifice(area), [1], from, to);
        foreach ((int pilot, int from, int to) in c.PilotPaths) network.Join<DrainLaw>(s_pilot, [], from, to, (pilot, 0), (to, 0));
        network.RunTo(Seconds);
        return [.. Enumerable.Range(0, c.Boundaries.Length + c.Starts.Length).Select(i => network.Amount(i))];
    }

    /// <summary>A tree of stores, leaks from some of them into boundaries, and flows into boundaries that a third store governs. Boundaries are numbered first.</summary>
    private sealed record Case(
        double[] Starts, double[] Capacities, double[] Joins, double[] Boundaries, (int Store, int Boundary, double Size)[] Leaks, (int Pilot, int From, int Boundary)[] Pilots)
    {
        public IEnumerable<(int From, int To, double Area)> Paths =>
            [
                .. Enumerable.Range(1, Starts.Length - 1).Select(i => (Store(i), Store(Math.Min((int)(Joins[i] * i), i - 1)), 1e-5)),
                .. Leaks.Select(l => (Store(l.Store), l.Boundary, Math.Pow(10, l.Size))),
            ];

        public IEnumerable<(int Pilot, int From, int Boundary)> PilotPaths => Pilots.Select(p => (Store(p.Pilot), Store(p.From), p.Boundary));

        private int Store(int i) => Boundaries.Length + i;
    }
}
