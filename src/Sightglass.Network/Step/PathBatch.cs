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
        fixed (int* rows = index.Rows, stamps = index.Stamps)
        {
            int* row = rows;
            int* stamp = stamps;
            for (int i = 0; i < index.Count; i++)
            {
                Gather(ref frame, i, p, u);
                TLaw.Evaluate(ref *p, ref Unsafe.AsRef<Lanes>(frame.K + index.FirstParameter[i]), ref *u, ref *q, ref *dq);
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
        fixed (int* rows = index.Rows)
        {
            int* row = rows;
            for (int i = 0; i < index.Count; i++)
            {
                Gather(ref frame, i, p, u);
                TLaw.Evaluate(ref *p, ref Unsafe.AsRef<Lanes>(frame.K + index.FirstParameter[i]), ref *u, ref *q, ref *dq);
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
        Gather(ref frame, path, p, u);
        TLaw.Evaluate(ref *p, ref Unsafe.AsRef<Lanes>(frame.K + index.FirstParameter[path]), ref *u, ref *q, ref *dq);
        return *q;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Gather(ref Frame frame, int i, Lanes* p, Lanes* u)
    {
        for (int j = 0; j < TLaw.Potentials; j++)
        {
            p[j] = frame.P[index.Potentials[(i * TLaw.Potentials) + j]];
        }

        for (int j = 0; j < TLaw.Inputs; j++)
        {
            u[j] = frame.U[index.Inputs[(i * TLaw.Inputs) + j]];
        }
    }
}
