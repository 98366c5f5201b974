using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A passage for a gas whose flow is p_up·K·√W(s) with a curve W of its own: an opening (<see cref="GasOrifice"/>) or a pipe (<see cref="GasPipe"/>).
/// </summary>
/// <remarks>
/// Exact above the rounding (a share of the choked flow), linear in the pressure difference below. Parameters: K = choked flow over upstream pressure
/// [kg/s/Pa], 1/(1 − critical ratio), rounding, then the coefficients of the curve. Input: opening 0…1.
/// </remarks>
public readonly struct GasPassage : ILaw
{
    private const int Curve = 3;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => Curve + FittedCurve.Terms;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T conductance = k * u;
        q = conductance * GasThrough.Flow<T, FittedCurve>(
            p, Unsafe.Add(ref p, 1), Unsafe.Add(ref k, 1), Unsafe.Add(ref k, 2), ref Unsafe.Add(ref k, Curve), out T slopeA, out T slopeB);
        dq = conductance * slopeA;
        Unsafe.Add(ref dq, 1) = conductance * slopeB;
    }

    /// <summary>The sheet of a passage.</summary>
    /// <param name="choked">Choked flow over upstream pressure, kg/s/Pa.</param>
    /// <param name="criticalRatio">Downstream over upstream pressure at which it chokes.</param>
    /// <param name="square">Square of the flow by the pressure ratio, in any unit, from the critical ratio to 1.</param>
    internal static double[] ParametersOf(double choked, double criticalRatio, Func<double, double> square, double rounding)
    {
        double greatest = square(criticalRatio);
        double[] curve = FittedCurve.Fit(s => square(1 - (s * (1 - criticalRatio))) / greatest);
        return [choked, 1 / (1 - criticalRatio), rounding, .. curve];
    }
}
