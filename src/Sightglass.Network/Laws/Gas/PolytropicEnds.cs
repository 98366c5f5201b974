using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A gas law between stores whose temperature follows from their pressure, T = T_ref·(p/p_ref)^((n−1)/n): the law's flow at its own (reference) temperature times
/// √(T_ref/T) of the end it comes from. Source: polytropic change, flow ∝ 1/√T₁ (A2-01, A2-03).
/// </summary>
/// <remarks>
/// Near no flow both ends count, by a smooth step over ± the blend flow. Below <see cref="LeastRatio"/> of the reference pressure the factor goes on along its tangent. For laws with two
/// potentials and one flow. Parameters: the law's, then for each end 1/p_ref [1/Pa] and −(n−1)/(2n), then 1/(2·blend flow) [s/kg].
/// </remarks>
public readonly struct PolytropicEnds<TLaw> : ILaw
    where TLaw : struct, ILaw
{
    /// <summary>Pressure over reference pressure below which the factor is straight.</summary>
    public const double LeastRatio = 1e-4;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => TLaw.Parameters + 5;

    public static int Inputs => TLaw.Inputs;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        TLaw.Evaluate(ref p, ref k, ref u, ref q, ref dq);
        ref T own = ref Unsafe.Add(ref k, TLaw.Parameters);
        T a = Factor(p, own, Unsafe.Add(ref own, 1), out T aSlope);
        T b = Factor(Unsafe.Add(ref p, 1), Unsafe.Add(ref own, 2), Unsafe.Add(ref own, 3), out T bSlope);
        T perBlend = Unsafe.Add(ref own, 4);
        T flow = q;
        T share = Smooth.Step(T.Of(0.5) + (flow * perBlend), out T shareSlope);
        T factor = (share * a) + ((T.Of(1) - share) * b);
        T gain = factor + (flow * shareSlope * perBlend * (a - b));
        q = flow * factor;
        dq = (gain * dq) + (flow * share * aSlope);
        Unsafe.Add(ref dq, 1) = (gain * Unsafe.Add(ref dq, 1)) + (flow * (T.Of(1) - share) * bSlope);
    }

    /// <summary>The sheet: of the law at the reference temperature, then of the ends.</summary>
    /// <param name="from">Pressure [Pa] at which the first store has the law's temperature, and its exponent n, 1 or more.</param>
    /// <param name="to">The same of the second store.</param>
    /// <param name="blendFlow">kg/s below which both ends count.</param>
    public static double[] ParametersOf(double[] law, (double Pressure, double Exponent) from, (double Pressure, double Exponent) to, double blendFlow) =>
        [.. law, 1 / from.Pressure, Power(from.Exponent), 1 / to.Pressure, Power(to.Exponent), 0.5 / blendFlow];

    private static double Power(double exponent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(exponent, 1);
        return -(exponent - 1) / (2 * exponent);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Factor<T>(T p, T perReference, T power, out T slope)
        where T : struct, IReal<T>
    {
        T ratio = p * perReference;
        T within = T.Max(ratio, T.Of(LeastRatio));
        T factor = Portable.Pow(within, power);
        T perRatio = power * factor / within;
        slope = perRatio * perReference;
        return factor + (perRatio * (ratio - within));
    }
}
