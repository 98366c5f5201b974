using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    private const double LeastFactor = 0.1;
    private const double GreatestFactor = 8;
    private const double Safety = 0.85;

    /// <summary>A step made from the flows moves no potential by more than this many tolerances.</summary>
    private const double FirstMove = 64;

    private const long LongestStep = 1L << 42;

    /// <summary>
    /// One attempt for every lane that has a task. Afterwards a lane whose task is <see cref="LaneTask.None"/> has what it asked for;
    /// the others go on with the next iteration. Allocates nothing.
    /// </summary>
    /// <returns>How many lanes still have a task.</returns>
    [SkipLocalsInit]
    public int Iterate()
    {
        Frame frame = FrameOf(_amounts, _potentials);
        EvaluateStores(ref frame, _amounts);
        if (_armedAny != 0)
        {
            EvaluateSwitches(End0());
        }

        EvaluateFlowsWithSlopes(ref frame);
        Lanes seconds = Sizes();
        Attempt(ref frame, seconds, out Lanes error);
        EvaluateStores(ref frame, _stage);
        return Conclude(error, seconds);
    }

    private StateView End0() => new(this, _amounts, _potentials);

    private void EvaluateStores(ref Frame frame, Lanes* amounts)
    {
        frame.M = amounts;
        foreach (StoreBatch batch in Topology.StoreBatches)
        {
            batch.Evaluate(ref frame);
        }
    }

    private void EvaluateFlowsWithSlopes(ref Frame frame)
    {
        Clear(_flows, Topology.Amounts + 1);
        Clear(_matrix, Topology.Plan.Values + 1);
        foreach (PathBatch batch in Topology.PathBatches)
        {
            batch.Stamp(ref frame);
        }
    }

    private void EvaluateFlows(ref Frame frame)
    {
        Clear(_flows, Topology.Amounts + 1);
        foreach (PathBatch batch in Topology.PathBatches)
        {
            batch.Add(ref frame);
        }
    }

    /// <summary>
    /// The size of every lane's attempt in seconds. A lane without a task repeats its last attempt, so that what it had in view stays in
    /// view; where there is nothing to try, the committed state is shown.
    /// </summary>
    private Lanes Sizes()
    {
        Lanes fromFlows = default;
        bool made = false;
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            s.Size = s.Task switch
            {
                LaneTask.Propose when s.NextSize == 0 => TicksOf(Made()[lane]),
                LaneTask.Propose => s.NextSize,
                LaneTask.None => s.Size,
                _ => s.Target - s.Committed,
            };
            _scratch[lane] = s.Size == 0 ? 1 : s.Size * SecondsPerTick;
        }

        return Read(_scratch);

        Lanes Made()
        {
            if (!made)
            {
                (fromFlows, made) = (SizeFromFlows(), true);
            }

            return fromFlows;
        }
    }

    private static long TicksOf(double seconds) =>
        seconds * (1 << 20) is var ticks && ticks < LongestStep ? Math.Max(1, (long)ticks) : ticks >= LongestStep ? LongestStep : 1;

    /// <summary>Seconds in which no potential moves further than <see cref="FirstMove"/> tolerances at its present rate.</summary>
    private Lanes SizeFromFlows()
    {
        Lanes fastest = Lanes.Of(1e-9);
        for (int i = 0; i < Topology.Amounts; i++)
        {
            fastest = Lanes.Max(Lanes.Abs(_flows[i] / _capacity[i]) * Lanes.Of(_inverseTolerance[i]), fastest);
        }

        return Lanes.Of(FirstMove) / fastest;
    }

    /// <summary>The four stages. Leaves the new amounts in the stage array.</summary>
    private void Attempt(ref Frame frame, Lanes seconds, out Lanes error)
    {
        int n = Topology.Amounts;
        Lanes rate = Lanes.Of(1) / seconds;
        Lanes two = Lanes.Of(2);
        Lanes trusted = Factor(rate * Lanes.Of(1 / Rodas3.Gamma));

        Copy(_flows, _flowsBefore, n);
        Solve(_flowsBefore);
        Spread(_change1);

        Lanes c21 = rate * Lanes.Of(Rodas3.C21);
        for (int i = 0; i < n; i++)
        {
            _flows[i] = Lanes.Fma(c21, _change1[i], _flowsBefore[i]);
            _stage[i] = Lanes.Fma(two, _change1[i], _amounts[i]);
        }

        Solve(_flows);
        Spread(_change2);

        frame.C = _ignoredCapacity;
        frame.Cross = _ignoredCross;
        EvaluateStores(ref frame, _stage);
        EvaluateFlows(ref frame);
        for (int i = 0; i < n; i++)
        {
            _flows[i] = Lanes.Fma(rate, _change1[i] - _change2[i], _flows[i]);
        }

        Solve(_flows);
        Spread(_change3);
        for (int i = 0; i < n; i++)
        {
            _stage[i] += _change3[i];
        }

        EvaluateStores(ref frame, _stage);
        EvaluateFlows(ref frame);
        Lanes c43 = rate * Lanes.Of(Rodas3.C43);
        for (int i = 0; i < n; i++)
        {
            _flows[i] = Lanes.Fma(c43, _change3[i], Lanes.Fma(rate, _change1[i] - _change2[i], _flows[i]));
        }

        Solve(_flows);
        error = Lanes.Of(0);
        for (int i = 0; i < n; i++)
        {
            error = Lanes.Max(error, Lanes.Abs(_solution[i]) * Lanes.Of(_inverseTolerance[i]));
            error = Lanes.Select(Lanes.LessOrEqual(_solution[i], _solution[i]), error, Lanes.Of(1e300));
        }

        error = Lanes.Select(trusted, error, Lanes.Of(1e300));
        Spread(_change2);
        for (int i = 0; i < n; i++)
        {
            _stage[i] += _change2[i];
        }
    }

    private static void Clear(Lanes* array, int count) => new Span<Lanes>(array, count).Clear();

    private static void Copy(Lanes* from, Lanes* to, int count) =>
        new Span<Lanes>(from, count).CopyTo(new Span<Lanes>(to, count));

    private static Lanes Read(double[] eight) => new(System.Runtime.Intrinsics.Vector512.Create<double>(eight));
}
