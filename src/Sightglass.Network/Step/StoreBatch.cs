using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Step;

/// <summary>All stores of one type.</summary>
internal abstract class StoreBatch
{
    /// <summary>Potentials and capacities from the amounts in the frame.</summary>
    public abstract void Evaluate(ref Frame frame);
}

/// <inheritdoc/>
internal sealed unsafe class StoreBatch<TStore>(StoreIndex[] rows) : StoreBatch
    where TStore : struct, IStore
{
    [SkipLocalsInit]
    public override void Evaluate(ref Frame frame)
    {
        if (TStore.Amounts == 1)
        {
            foreach (StoreIndex s in rows)
            {
                TStore.Evaluate(
                    ref Unsafe.AsRef<Lanes>(frame.M + s.Row),
                    ref Unsafe.AsRef<Lanes>(frame.K + s.FirstParameter),
                    ref Unsafe.AsRef<Lanes>(frame.P + s.Row),
                    ref Unsafe.AsRef<Lanes>(frame.C + s.Row));
            }

            return;
        }

        Lanes* m = stackalloc Lanes[2];
        Lanes* p = stackalloc Lanes[2];
        Lanes* c = stackalloc Lanes[4];
        foreach (StoreIndex s in rows)
        {
            m[0] = frame.M[s.Row];
            m[1] = frame.M[s.SecondRow];
            TStore.Evaluate(ref *m, ref Unsafe.AsRef<Lanes>(frame.K + s.FirstParameter), ref *p, ref *c);
            frame.P[s.Row] = p[0];
            frame.P[s.SecondRow] = p[1];
            frame.C[s.Row] = c[0];
            frame.Cross[s.Cross] = c[1];
            frame.Cross[s.Cross + 1] = c[2];
            frame.C[s.SecondRow] = c[3];
        }
    }
}
