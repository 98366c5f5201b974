using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A filter: Δp = (1 + dirt)·(a·ṁ + b·ṁ·|ṁ|), solved for the flow: ṁ = 2x/(a + √(a² + 4b|x|)), x = (pa + offset − pb)/(1 + dirt). Exact, smooth by itself. With
/// b = 0 a laminar line. Source: linear and quadratic loss of porous media (Forchheimer; from memory).
/// </summary>
/// <remarks>Parameters: a [Pa·s/kg], b [Pa·s²/kg²], offset [Pa]. Input: dirt, 0 = clean, 1 = twice the loss, and so on.</remarks>
public readonly struct LiquidFilter : ILaw
{
    /// <summary>Where the static head at the first end stands in the sheet: what a change of tilt changes.</summary>
    public const int OffsetParameter = 2;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T clean = T.Of(1) / (T.Of(1) + u);
        T x = (p + Unsafe.Add(ref k, 2) - Unsafe.Add(ref p, 1)) * clean;
        T root = T.Sqrt((k * k) + (T.Of(4) * Unsafe.Add(ref k, 1) * T.Abs(x)));
        q = (x + x) / (k + root);
        T d = clean / root;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }

    /// <summary>The sheet of a filter that loses a known pressure at a known flow.</summary>
    /// <param name="flow">kg/s, above 0.</param>
    /// <param name="drop">Pa, above 0, when clean.</param>
    /// <param name="linearShare">How much of the loss grows with the flow rather than its square there, above 0, up to 1: paper and felt nearly all, a strainer little.</param>
    /// <param name="offset">Pa added at the first end.</param>
    public static double[] ParametersOf(double flow, double drop, double linearShare = 0.7, double offset = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(flow);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(drop);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(linearShare);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(linearShare, 1);
        return [linearShare * drop / flow, (1 - linearShare) * drop / (flow * flow), offset];
    }

    /// <summary>The sheet of a laminar line.</summary>
    /// <param name="resistance">Pa·s/m³.</param>
    /// <param name="density">kg/m³.</param>
    public static double[] LaminarLine(double resistance, double density) => [resistance / density, 0, 0];
}
