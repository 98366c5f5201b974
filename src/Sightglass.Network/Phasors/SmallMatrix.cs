namespace Sightglass.Network.Phasors;

/// <summary>Matrices of a few phasors, one row after the other.</summary>
public static class SmallMatrix
{
    /// <summary>Inverts in place, by elimination with the greatest pivot of each column.</summary>
    /// <param name="a">size×size.</param>
    /// <returns>Whether it can be inverted; if not its contents mean nothing.</returns>
    public static bool Invert(Span<Phasor> a, int size)
    {
        Span<int> swaps = stackalloc int[size];
        for (int k = 0; k < size; k++)
        {
            int best = k;
            for (int i = k + 1; i < size; i++)
            {
                best = a[(i * size) + k].SquaredMagnitude > a[(best * size) + k].SquaredMagnitude ? i : best;
            }

            Phasor pivot = Phasor.Inverse(a[(best * size) + k]);
            if (!pivot.IsFinite)
            {
                return false;
            }

            swaps[k] = best;
            for (int j = 0; j < size; j++)
            {
                (a[(k * size) + j], a[(best * size) + j]) = (a[(best * size) + j], a[(k * size) + j]);
            }

            a[(k * size) + k] = Phasor.One;
            for (int j = 0; j < size; j++)
            {
                a[(k * size) + j] = pivot * a[(k * size) + j];
            }

            for (int i = 0; i < size; i++)
            {
                if (i == k) continue;
                Phasor factor = a[(i * size) + k];
                a[(i * size) + k] = default;
                for (int j = 0; j < size; j++)
                {
                    a[(i * size) + j] -= factor * a[(k * size) + j];
                }
            }
        }

        for (int k = size - 1; k >= 0; k--)
        {
            for (int i = 0; i < size; i++)
            {
                (a[(i * size) + k], a[(i * size) + swaps[k]]) = (a[(i * size) + swaps[k]], a[(i * size) + k]);
            }
        }

        return true;
    }
}
