using System.Numerics;

namespace Sightglass.Basics.Statistics;

/// <summary>
/// Sobol' points: they fill a box of up to 32 dimensions more evenly than independent draws. For maps and sensitivity only; bounds need independent draws.
/// Unscrambled, in Gray-code order, the first point is the corner 0 (P. Bratley and B. Fox, ACM TOMS 14, 1988, from memory).
/// </summary>
public sealed class Sobol
{
    private const int Bits = 32;
    private const double Scale = 1.0 / (1L << Bits);

    private readonly uint[][] _directions;

    /// <param name="dimensions">1…32.</param>
    public Sobol(int dimensions)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MostDimensions);
        _directions = [.. SobolDirections.All.Take(dimensions).Select(d => Directions(d.Polynomial, d.First))];
    }

    public static int MostDimensions => SobolDirections.All.Length;

    public int Dimensions => _directions.Length;

    /// <summary>The point with this index, each coordinate in 0 ≤ x &lt; 1. Any index can be asked for in any order.</summary>
    /// <param name="index">0…2³²−1.</param>
    /// <param name="point">Room for the coordinates.</param>
    public void Point(uint index, Span<double> point)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(point.Length, Dimensions);
        uint gray = index ^ (index >> 1);
        for (int d = 0; d < _directions.Length; d++)
        {
            uint x = 0;
            for (uint left = gray; left != 0; left &= left - 1)
            {
                x ^= _directions[d][BitOperations.TrailingZeroCount(left)];
            }

            point[d] = x * Scale;
        }
    }

    /// <summary>Direction numbers as fractions of 2³², the i-th for the i-th bit of the Gray code.</summary>
    private static uint[] Directions(uint polynomial, uint[] first)
    {
        uint[] v = new uint[Bits];
        int degree = first.Length;
        for (int i = 0; i < Bits; i++)
        {
            if (degree == 0 || i < degree)
            {
                v[i] = (degree == 0 ? 1 : first[i]) << (Bits - 1 - i);
                continue;
            }

            v[i] = v[i - degree] ^ (v[i - degree] >> degree);
            for (int k = 1; k < degree; k++)
            {
                v[i] ^= ((polynomial >> (degree - k)) & 1) * v[i - k];
            }
        }

        return v;
    }
}
