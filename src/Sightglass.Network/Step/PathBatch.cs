using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;

namespace Sightglass.Network.Step;

/// <summary>All paths of one law.</summary>
internal abstract class PathBatch
{
    /// <summary>Adds flows to the rows and slopes to the matrix.</summary>
    public abstract void Stamp(ref Frame frame);

    /// <summary>Adds flows to the rows only.</summary>
    public abstract void Add(ref Frame frame);

    /// <summary>The flows of one path at the potentials in the frame (first flow only where there are two).</summary>
    public abstract Lanes FlowOf(ref Frame frame, int path);
}

/// <inheritdoc/>
internal sealed unsafe class PathBatch<TLaw>(PathIndex index) : PathBatch
    where TLaw : struct, ILaw
{
    [SkipLocalsInit]
    public override void Stamp(ref Frame frame)
    {
        Lanes* p = stackalloc Lanes[TLaw.Potentials];
        Lanes* u = stackalloc Lanes[TLaw.Inputs + 1];
        Lanes* q = stackalloc Lanes[TLaw.Flows];
        Lanes* dq = stackalloc Lanes[TLaw.Flows * TLaw.Potentials];
        fixed (int* rows = index.Rows, stamps = index.Stamps, potentials = index.Potentials, inputs = index.Inputs, parameters = index.FirstParameter)
        {
            int* row = rows;
            int* stamp = stamps;
            for (int i = 0; i < index.Count; i++)
            {
                Gather(frame.P, potentials + (i * TLaw.Potentials), p, TLaw.Potentials);
                Gather(frame.U, inputs + (i * TLaw.Inputs), u, TLaw.Inputs);
                TLaw.Evaluate(ref *p, ref Unsafe.AsRef<Lanes>(frame.K + parameters[i]), ref *u, ref *q, ref *dq);
                for (int f = 0; f < TLaw.Flows; f++)
                {
                    frame.Q[row[0]] -= q[f];
                    frame.Q[row[1]] += q[f];
                    row += 2;
                    for (int j = 0; j < TLaw.Potentials; j++)
                    {
                        Lanes d = dq[(f * TLaw.Potentials) + j];
                        frame.A[stamp[0]] += d;
                        frame.A[stamp[1]] -= d;
                        stamp += 2;
                    }
                }
            }
        }
    }

    [SkipLocalsInit]
    public override void Add(ref Frame frame)
    {
        Lanes* p = stackalloc Lanes[TLaw.Potentials];
        Lanes* u = stackalloc Lanes[TLaw.Inputs + 1];
        Lanes* q = stackalloc Lanes[TLaw.Flows];
        Lanes* dq = stackalloc Lanes[TLaw.Flows * TLaw.Potentials];
        fixed (int* rows = index.Rows, potentials = index.Potentials, inputs = index.Inputs, parameters = index.FirstParameter)
        {
            int* row = rows;
            for (int i = 0; i < index.Count; i++)
            {
                Gather(frame.P, potentials + (i * TLaw.Potentials), p, TLaw.Potentials);
                Gather(frame.U, inputs + (i * TLaw.Inputs), u, TLaw.Inputs);
                TLaw.Evaluate(ref *p, ref Unsafe.AsRef<Lanes>(frame.K + parameters[i]), ref *u, ref *q, ref *dq);
                for (int f = 0; f < TLaw.Flows; f++)
                {
                    frame.Q[row[0]] -= q[f];
                    frame.Q[row[1]] += q[f];
                    row += 2;
                }
            }
        }
    }

    [SkipLocalsInit]
    public override Lanes FlowOf(ref Frame frame, int path)
    {
        Lanes* p = stackalloc Lanes[TLaw.Potentials];
        Lanes* u = stackalloc Lanes[TLaw.Inputs + 1];
        Lanes* q = stackalloc Lanes[TLaw.Flows];
        Lanes* dq = stackalloc Lanes[TLaw.Flows * TLaw.Potentials];
        fixed (int* potentials = index.Potentials, inputs = index.Inputs)
        {
            Gather(frame.P, potentials + (path * TLaw.Potentials), p, TLaw.Potentials);
            Gather(frame.U, inputs + (path * TLaw.Inputs), u, TLaw.Inputs);
        }

        TLaw.Evaluate(ref *p, ref Unsafe.AsRef<Lanes>(frame.K + index.FirstParameter[path]), ref *u, ref *q, ref *dq);
        return *q;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Gather(Lanes* from, int* which, Lanes* to, int count)
    {
        for (int j = 0; j < count; j++)
        {
            to[j] = from[which[j]];
        }
    }
}
