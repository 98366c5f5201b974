using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Step;

/// <summary>All stores of one type.</summary>
internal abstract class StoreBatch
{
    /// <summary>Potentials and capacities from the amounts in the frame.</summary>
    public abstract void Evaluate(ref Frame frame);

    /// <summary>Potentials only.</summary>
    public abstract void EvaluatePotentials(ref Frame frame);
}

/// <inheritdoc/>
internal sealed unsafe class StoreBatch<TStore>(StoreIndex[] rows) : StoreBatch
    where TStore : struct, IStore
{
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
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

        foreach (StoreIndex s in rows)
        {
            EvaluatePair(ref frame, s, out Row<Lanes> c);
            frame.C[s.Row] = c[0];
            frame.Cross[s.Cross] = c[1];
            frame.Cross[s.Cross + 1] = c[2];
            frame.C[s.SecondRow] = c[3];
        }
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public override void EvaluatePotentials(ref Frame frame)
    {
        foreach (StoreIndex s in rows)
        {
            if (TStore.Amounts == 1)
            {
                Unsafe.SkipInit(out Lanes ignored);
                TStore.Evaluate(
                    ref Unsafe.AsRef<Lanes>(frame.M + s.Row), ref Unsafe.AsRef<Lanes>(frame.K + s.FirstParameter), ref Unsafe.AsRef<Lanes>(frame.P + s.Row), ref ignored);
            }
            else
            {
                EvaluatePair(ref frame, s, out _);
            }
        }
    }

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void EvaluatePair(ref Frame frame, StoreIndex s, out Row<Lanes> c)
    {
        Unsafe.SkipInit(out Row<Lanes> m);
        Unsafe.SkipInit(out Row<Lanes> p);
        Unsafe.SkipInit(out c);
        m[0] = frame.M[s.Row];
        m[1] = frame.M[s.SecondRow];
        TStore.Evaluate(ref m[0], ref Unsafe.AsRef<Lanes>(frame.K + s.FirstParameter), ref p[0], ref c[0]);
        frame.P[s.Row] = p[0];
        frame.P[s.SecondRow] = p[1];
    }
}
