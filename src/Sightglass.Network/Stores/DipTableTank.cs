using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A tank of any shape, known by its dip table: heights of the level against volumes, joined by a <see cref="MonotoneCubic"/> that passes through every row.
/// Its potential is the pressure at height 0 of the table: p = p_s + ρ·g·cosθ·h. Tilt is not followed.
/// </summary>
/// <remarks>
/// Parameters: 1/ρ [m³/kg], ρ·g·cosθ [Pa/m], p_s [Pa], volume of the last row [m³], 1/riser [1/m²], then <see cref="Rows"/> rows of volume [m³],
/// height [m], slope [1/m²]. Above the last row see <see cref="VentRiser"/>.
/// </remarks>
public readonly struct DipTableTank : IStore
{
    /// <summary>How many rows a table may have.</summary>
    public const int Rows = 24;

    private const int FirstRow = 5;

    public static int Amounts => 1;

    public static int Parameters => FirstRow + (Rows * MonotoneCubic.RowLength);

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        T inverseDensity = k;
        T weight = Unsafe.Add(ref k, 1);
        T full = Unsafe.Add(ref k, 3);
        T inverseRiser = Unsafe.Add(ref k, 4);
        T volume = m * inverseDensity;
        T riser = VentRiser.Contents(volume, full, inverseRiser, out T share);
        T height = MonotoneCubic.Evaluate(volume - riser, ref Unsafe.Add(ref k, FirstRow), Rows, full, out T rise);
        p = Unsafe.Add(ref k, 2) + (weight * (height + (riser * inverseRiser)));
        T perVolume = (rise * (T.Of(1) - share)) + (inverseRiser * share);
        c = T.Of(1) / (weight * inverseDensity * perVolume);
    }

    /// <summary>The sheet of a tank.</summary>
    /// <param name="table">Volume [m³] and height [m], both rising from row to row, 2…<see cref="Rows"/> of them; the first mostly 0, 0.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="surfacePressure">Pa absolute.</param>
    /// <param name="riserArea">Section of the vent riser, m², at least 1 cm².</param>
    /// <exception cref="ArgumentException">The table has too few or too many rows, or does not rise.</exception>
    public static double[] ParametersOf(
        IReadOnlyList<(double Volume, double Height)> table, double density, double surfacePressure = Physical.Atmosphere, double riserArea = 5e-4)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(density);
        ArgumentOutOfRangeException.ThrowIfLessThan(riserArea, VentRiser.SmallestArea);
        double[] rows = MonotoneCubic.RowsOf(table, Rows);
        return [1 / density, density * Physical.Gravity, surfacePressure, table[^1].Volume, 1 / riserArea, .. rows];
    }
}
