using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A centrifugal pump by its curve of head against flow. What it does not give of the shut-off pressure p₀·n² goes to its inner loss x = pa + offset + p₀·n² − pb,
/// and the flow follows from the loss by a <see cref="MonotoneCubic"/> over x/√(|x|+ε): through every point of the curve at rated speed, exact for a parabola
/// H₀ − a·Q² (a straight line in that variable) at every speed. Source: head curve and affinity (A1-06a; Karassik, Pump Handbook, from memory).
/// </summary>
/// <remarks>
/// A curve that is not a parabola has its loss unchanged by speed. At rest it is a passage for flow in either direction. Parameters: p₀ [Pa], ε [Pa], last of the
/// rows' first column, offset [Pa], then <see cref="Rows"/> rows of x/√(|x|+ε) [√Pa], flow [kg/s], slope. Input: speed over rated speed.
/// </remarks>
public readonly struct CurvePump : ILaw
{
    /// <summary>How many points a curve may have.</summary>
    public const int Rows = 12;

    private const int FirstRow = 4;

    /// <summary>ε as a share of the shut-off pressure: rounds the flow below a third of a thousandth of its range; elsewhere it is in the rows and does no harm.</summary>
    private const double Rounding = 1e-7;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => FirstRow + (Rows * MonotoneCubic.RowLength);

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T x = p + Unsafe.Add(ref k, 3) + (k * u * u) - Unsafe.Add(ref p, 1);
        T root = Smooth.SignedRoot(x, Unsafe.Add(ref k, 1), out T rootSlope);
        q = MonotoneCubic.Evaluate(root, ref Unsafe.Add(ref k, FirstRow), Rows, Unsafe.Add(ref k, 2), out T slope);
        T d = slope * rootSlope;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }

    /// <summary>The sheet of a pump with a curve.</summary>
    /// <param name="curve">Flow [m³/s] and head [m] at rated speed, 2…<see cref="Rows"/> points: the first at no flow, flow rising and head falling from one to the next.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="offset">Pa added at the first end.</param>
    /// <exception cref="ArgumentException">The curve is not of that kind.</exception>
    public static double[] ParametersOf(IReadOnlyList<(double Flow, double Head)> curve, double density, double offset = 0)
    {
        if (curve.Count == 0 || curve[0].Flow != 0 || !(curve[0].Head > 0)) throw new ArgumentException("The first point must be the head at no flow.", nameof(curve));
        double weight = density * Physical.Gravity;
        double shutOff = weight * curve[0].Head;
        double epsilon = Rounding * shutOff;
        double RootOf(double head)
        {
            double loss = weight * (curve[0].Head - head);
            return loss / Math.Sqrt(loss + epsilon);
        }

        (double, double)[] points = [.. curve.Select(c => (RootOf(c.Head), density * c.Flow))];
        return [shutOff, epsilon, points[^1].Item1, offset, .. MonotoneCubic.RowsOf(points, Rows)];
    }

    /// <summary>The sheet of a pump with the curve H₀ − a·Q².</summary>
    /// <param name="shutOffHead">H₀, m.</param>
    /// <param name="loss">a, m per (m³/s)².</param>
    public static double[] Parabola(double shutOffHead, double loss, double density, double offset = 0) =>
        ParametersOf([(0, shutOffHead), (Math.Sqrt(shutOffHead / loss), 0)], density, offset);
}
