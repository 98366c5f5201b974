using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Motion;

/// <summary>
/// What resists motion: F = a·v/√(v² + ε²) + b·v + c·v·|v|, a momentum flow from what moves to what stands, by the speed difference v. The first term is a constant against the motion, rounded
/// around standstill: it is too small by less than a share ε²/(2v²), and by nothing that matters from a few ε up. Source: the polynomial of the trade's resistance formulas (see the calculators).
/// </summary>
/// <remarks>Parameters: a [N], b [N·s/m], c [N·s²/m²], ε [m/s]. Input: factor, 0 or more.</remarks>
public readonly struct SpeedResistance : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 4;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T v = p - Unsafe.Add(ref p, 1);
        T b = Unsafe.Add(ref k, 1);
        T c = Unsafe.Add(ref k, 2);
        T epsilon = Unsafe.Add(ref k, 3);
        T square = T.Fma(v, v, epsilon * epsilon);
        T inverse = T.Of(1) / T.Sqrt(square);
        T speed = T.Abs(v);
        q = u * v * T.Fma(k, inverse, T.Fma(c, speed, b));
        T slope = u * T.Fma(k * epsilon * epsilon, inverse / square, T.Fma(c + c, speed, b));
        dq = slope;
        Unsafe.Add(ref dq, 1) = -slope;
    }

    /// <summary>The polynomial itself, N, at a speed above 0, m/s: for who does not integrate.</summary>
    public static double Newtons(ReadOnlySpan<double> parameters, double speed) => parameters[0] + (speed * (parameters[1] + (speed * parameters[2])));

    /// <summary>The sheet of a vehicle or train.</summary>
    /// <param name="constant">a, N, 0 or more.</param>
    /// <param name="perSpeed">b, N·s/m, 0 or more.</param>
    /// <param name="perSquare">c, N·s²/m², 0 or more.</param>
    /// <param name="rounding">ε, m/s, above 0: 0.01 is a crawl.</param>
    public static double[] ParametersOf(double constant, double perSpeed, double perSquare, double rounding = 0.01)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(constant);
        ArgumentOutOfRangeException.ThrowIfNegative(perSpeed);
        ArgumentOutOfRangeException.ThrowIfNegative(perSquare);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rounding);
        return [constant, perSpeed, perSquare, rounding];
    }
}
