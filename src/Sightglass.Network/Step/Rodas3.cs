using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Step;

/// <summary>
/// RODAS3: linearly implicit, four stages of which the first two share an evaluation, order 3 with an embedded order 2,
/// stiffly accurate and L-stable. Source: Sandu, Verwer, Blom, Spee, Carmichael, Potra, Atmospheric Environment 31 (1997)
/// 3459–3472, coefficients in the transformed form (from memory, checked by the order test).
/// </summary>
/// <remarks>
/// (C/(hγ) − ∂Q/∂p)·κᵢ = Q(mᵢ) + Σⱼ cᵢⱼ·kⱼ/h, kᵢ = C·κᵢ;
/// m₁ = m₂ = m, m₃ = m + 2k₁, m₄ = m₃ + k₃, new = m₄ + k₄, and k₄ is the error estimate. c₃₁ = c₄₁ = 1, c₃₂ = c₄₂ = −1.
/// </remarks>
internal static unsafe class Rodas3
{
    public const double Gamma = 0.5;

    /// <summary>Share of the first stage's change in the second right side, over h.</summary>
    public const double C21 = 4;

    /// <summary>Share of the third stage's change in the fourth right side, over h.</summary>
    public const double C43 = -8.0 / 3.0;

    internal readonly struct First : IStage
    {
        public static bool HasFlows => true;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static Lanes Right(in Stages s, int row, Lanes flow) => s.Flows[row] = flow;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Take(in Stages s, int row, Lanes change)
        {
            s.Change1[row] = change;
            s.Third[row] = Lanes.Fma(Lanes.Of(2), change, s.Before[row]);
        }
    }

    internal readonly struct Second : IStage
    {
        public static bool HasFlows => false;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static Lanes Right(in Stages s, int row, Lanes flow) => Lanes.Fma(*s.Rate21, s.Change1[row], s.Flows[row]);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Take(in Stages s, int row, Lanes change) => s.Carried[row] = *s.Rate * (s.Change1[row] - change);
    }

    internal readonly struct Third : IStage
    {
        public static bool HasFlows => true;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static Lanes Right(in Stages s, int row, Lanes flow) => flow + s.Carried[row];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Take(in Stages s, int row, Lanes change)
        {
            s.Change3[row] = change;
            s.Fourth[row] = s.Third[row] + change;
        }
    }

    internal readonly struct Fourth : IStage
    {
        public static bool HasFlows => true;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static Lanes Right(in Stages s, int row, Lanes flow) => Lanes.Fma(*s.Rate43, s.Change3[row], flow + s.Carried[row]);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Take(in Stages s, int row, Lanes change) => s.After[row] = s.Fourth[row] + change;
    }
}
