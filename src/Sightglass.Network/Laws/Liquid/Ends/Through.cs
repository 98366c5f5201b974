using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>
/// One evaluation of a law between two ends: the flow it would give of liquid alone, and how much of each end's contents goes along. What is drawn in comes from
/// where the flow comes from; near no flow both ends count, by a smooth step over ± the blend flow.
/// </summary>
/// <remarks>Its parts are kept apart on purpose: in one piece the compiler runs out of patience and calls a function for every + and ×, ten times slower.</remarks>
internal ref struct Through<T, TFrom, TLaw, TTo>
    where T : struct, IReal<T>
    where TFrom : ILiquidEnd
    where TLaw : ILaw
    where TTo : ILiquidEnd
{
    private LiquidEnd<T> _from;
    private LiquidEnd<T> _to;
    private Row<T> _slopes;
    private T _flow;
    private T _share;
    private T _shareSlope;

    /// <summary>Potentials of the path: those of the ends, then the law's pilots.</summary>
    public static int Potentials => TFrom.Potentials + TTo.Potentials + TLaw.Potentials - 2;

    /// <summary>Parameters of the path: the law's, the ends', then 1/(2·blend flow) [s/kg].</summary>
    public static int Parameters => TLaw.Parameters + TFrom.Parameters + TTo.Parameters + 1;

    /// <summary>Evaluates into memory that need not have been cleared.</summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Run(ref T p, ref T k, ref T u)
    {
        TFrom.Evaluate(ref p, ref Unsafe.Add(ref k, TLaw.Parameters), out _from);
        TTo.Evaluate(ref Unsafe.Add(ref p, TFrom.Potentials), ref Unsafe.Add(ref k, TLaw.Parameters + TFrom.Parameters), out _to);
        Unsafe.SkipInit(out Row<T> seen);
        seen[0] = _from.Pressure;
        seen[1] = _to.Pressure;
        for (int j = 2; j < TLaw.Potentials; j++) seen[j] = Unsafe.Add(ref p, TFrom.Potentials + TTo.Potentials + j - 2);
        Apply(ref seen[0], ref k, ref u, ref _flow, ref _slopes[0]);
        T perBlend = Unsafe.Add(ref k, Parameters - 1);
        _share = Smooth.Step(T.Of(0.5) + (_flow * perBlend), out _shareSlope);
        _shareSlope *= perBlend;
    }

    /// <summary>Writes the flow of liquid [kg/s] and its slopes.</summary>
    public readonly void Liquid(ref T q, ref T dq) => Carry(T.Of(1), in _from.Wet, in _to.Wet, ref q, ref dq);

    /// <summary>Writes the flow of air [kg/s] and its slopes.</summary>
    /// <param name="perPascal">1/(ρ·R·T).</param>
    public readonly void Air(T perPascal, ref T q, ref T dq) => Carry(perPascal, in _from.Air, in _to.Air, ref q, ref dq);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Apply(ref T p, ref T k, ref T u, ref T q, ref T dq) => TLaw.Evaluate(ref p, ref k, ref u, ref q, ref dq);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private readonly void Carry(T factor, in EndContent<T> from, in EndContent<T> to, ref T q, ref T dq)
    {
        T content = (_share * from.Value) + ((T.Of(1) - _share) * to.Value);
        T flow = factor * _flow;
        q = flow * content;
        T gain = factor * (content + (_flow * _shareSlope * (from.Value - to.Value)));
        T byFrom = flow * _share;
        T byTo = flow - byFrom;
        dq = (gain * _slopes[0] * _from.PressureSlope) + (byFrom * from.Slope);
        if (TFrom.Potentials == 2) Unsafe.Add(ref dq, 1) = byFrom * from.SecondSlope;
        ref T second = ref Unsafe.Add(ref dq, TFrom.Potentials);
        second = (gain * _slopes[1] * _to.PressureSlope) + (byTo * to.Slope);
        if (TTo.Potentials == 2) Unsafe.Add(ref second, 1) = byTo * to.SecondSlope;
        for (int j = 2; j < TLaw.Potentials; j++) Unsafe.Add(ref second, TTo.Potentials + j - 2) = gain * _slopes[j];
    }
}
