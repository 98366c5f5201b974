using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// s·(2 − s) + s·(1 − s)²·c(s): the ellipse and what a curve differs from it by, c a polynomial in x = 2s − 1 through <see cref="Terms"/> Chebyshev nodes.
/// Keeps value and slope at both ends whatever c. Parameters: the coefficients.
/// </summary>
internal readonly struct FittedCurve : IGasCurve
{
    public const int Terms = 10;

    /// <summary>cos((2i+1)π/20), i = 0…9.</summary>
    private static ReadOnlySpan<double> Nodes =>
    [
        0.9876883405951378, 0.8910065241883679, 0.7071067811865476, 0.4539904997395468, 0.1564344650402309,
        -0.1564344650402309, -0.4539904997395468, -0.7071067811865476, -0.8910065241883679, -0.9876883405951378,
    ];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Square<T>(T s, ref T k, out T slope)
        where T : struct, IReal<T>
    {
        T x = (s + s) - T.Of(1);
        T c = Unsafe.Add(ref k, Terms - 1);
        T d = T.Of(0);
        for (int i = Terms - 2; i >= 0; i--)
        {
            d = T.Fma(d, x, c);
            c = T.Fma(c, x, Unsafe.Add(ref k, i));
        }

        T left = T.Of(1) - s;
        T bulge = s * left * left;
        slope = left * (T.Of(2) + ((T.Of(1) - (T.Of(3) * s)) * c)) + ((bulge + bulge) * d);
        return (s * (T.Of(2) - s)) + (bulge * c);
    }

    /// <summary>The coefficients for a curve.</summary>
    /// <param name="square">The square of the flow as a share of its greatest, by s.</param>
    public static double[] Fit(Func<double, double> square)
    {
        double[] divided = new double[Terms];
        for (int i = 0; i < Terms; i++)
        {
            double s = (Nodes[i] + 1) / 2;
            divided[i] = (square(s) - (s * (2 - s))) / (s * (1 - s) * (1 - s));
        }

        for (int j = 1; j < Terms; j++)
        {
            for (int i = Terms - 1; i >= j; i--) divided[i] = (divided[i] - divided[i - 1]) / (Nodes[i] - Nodes[i - j]);
        }

        return Expanded(divided);
    }

    /// <summary>From Newton's form at the nodes to powers of x.</summary>
    private static double[] Expanded(double[] divided)
    {
        double[] powers = new double[Terms];
        for (int i = Terms - 1; i >= 0; i--)
        {
            for (int j = Terms - 1; j > 0; j--) powers[j] = powers[j - 1] - (Nodes[i] * powers[j]);
            powers[0] = divided[i] - (Nodes[i] * powers[0]);
        }

        return powers;
    }
}
