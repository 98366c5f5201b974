using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Step;

/// <summary>All paths of one law.</summary>
internal abstract class PathBatch
{
    /// <summary>Leaves flows and slopes in the frame.</summary>
    public abstract void EvaluateWithSlopes(ref Frame frame);

    /// <summary>Leaves the flows in the frame.</summary>
    public abstract void Evaluate(ref Frame frame);

    /// <summary>The flows of one path at the potentials in the frame (first flow only where there are two).</summary>
    public abstract Lanes FlowOf(ref Frame frame, int path);
}

/// <inheritdoc/>
/// <remarks>
/// Where only flows are wanted the slopes go to a local row that nobody reads: then the compiler leaves out what is computed for them alone. What a law sees is gathered
/// on the frame's cache lines of its own, not on the stack, whose addresses would have every eight-lane number straddle two.
/// </remarks>
internal sealed unsafe class PathBatch<TLaw>(PathIndex index) : PathBatch
    where TLaw : struct, ILaw
{
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public override void EvaluateWithSlopes(ref Frame frame)
    {
        int* potentials = index.Potentials.Start;
        int* inputs = index.Inputs.Start;
        int* parameters = index.FirstParameter.Start;
        Lanes* flow = frame.Q + index.FirstFlow;
        Lanes* slope = frame.D + index.FirstSlope;
        for (int left = index.Count; left > 0; left--)
        {
            Gather(frame.P, potentials, frame.Seen, TLaw.Potentials);
            Gather(frame.U, inputs, frame.Given, TLaw.Inputs);
            TLaw.Evaluate(ref *frame.Seen, ref Unsafe.AsRef<Lanes>(frame.K + *parameters), ref *frame.Given, ref *flow, ref *slope);
            potentials += TLaw.Potentials;
            inputs += TLaw.Inputs;
            parameters++;
            flow += TLaw.Flows;
            slope += TLaw.Flows * TLaw.Potentials;
        }
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public override void Evaluate(ref Frame frame)
    {
        int* potentials = index.Potentials.Start;
        int* inputs = index.Inputs.Start;
        int* parameters = index.FirstParameter.Start;
        Lanes* flow = frame.Q + index.FirstFlow;
        for (int left = index.Count; left > 0; left--)
        {
            Gather(frame.P, potentials, frame.Seen, TLaw.Potentials);
            Gather(frame.U, inputs, frame.Given, TLaw.Inputs);
            Unsafe.SkipInit(out Slopes ignored);
            TLaw.Evaluate(ref *frame.Seen, ref Unsafe.AsRef<Lanes>(frame.K + *parameters), ref *frame.Given, ref *flow, ref ignored[0]);
            potentials += TLaw.Potentials;
            inputs += TLaw.Inputs;
            parameters++;
            flow += TLaw.Flows;
        }
    }

    [SkipLocalsInit]
    public override Lanes FlowOf(ref Frame frame, int path)
    {
        Gather(frame.P, index.Potentials.Start + (path * TLaw.Potentials), frame.Seen, TLaw.Potentials);
        Gather(frame.U, index.Inputs.Start + (path * TLaw.Inputs), frame.Given, TLaw.Inputs);
        Lanes* flows = stackalloc Lanes[ILaw.MostFlows];
        Unsafe.SkipInit(out Slopes ignored);
        TLaw.Evaluate(ref *frame.Seen, ref Unsafe.AsRef<Lanes>(frame.K + index.FirstParameter.Start[path]), ref *frame.Given, ref *flows, ref ignored[0]);
        return *flows;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Gather(Lanes* from, int* which, Lanes* to, int count)
    {
        for (int i = 0; i < count; i++)
        {
            to[i] = from[which[i]];
        }
    }

    /// <summary>Room for all slopes of a path.</summary>
    [InlineArray(Row<Lanes>.Length * ILaw.MostFlows)]
    private struct Slopes
    {
        private Lanes _first;
    }
}
