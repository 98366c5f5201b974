using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A cylinder with a spring-loaded piston, air at constant temperature: p = m·R·T/V₀ until the piston moves, then rising straight with the air that goes in until the piston
/// is out, then as in the whole volume. Three straight stretches with rounded corners. Source: ideal gas law at the corners; a spring whose force grows so that
/// the stretch between is straight in the amount (common practice, no source).
/// </summary>
/// <remarks>
/// Parameters: ∂p/∂m of the three stretches [Pa/kg] (the first, then how much the second and the third differ from the one before), amounts at the two corners [kg],
/// δ [kg] over ± which corners are rounded, 1/(2δ).
/// </remarks>
public readonly struct PistonGasStore : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 7;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        T delta = Unsafe.Add(ref k, 5);
        T perTwo = Unsafe.Add(ref k, 6);
        T moved = Smooth.Positive(m - Unsafe.Add(ref k, 3), delta, perTwo, out T movedSlope);
        T beyond = Smooth.Positive(m - Unsafe.Add(ref k, 4), delta, perTwo, out T beyondSlope);
        T second = Unsafe.Add(ref k, 1);
        T third = Unsafe.Add(ref k, 2);
        p = (k * m) + (second * moved) + (third * beyond);
        c = T.Of(1) / (k + (second * movedSlope) + (third * beyondSlope));
    }

    /// <summary>The sheet of a cylinder.</summary>
    /// <param name="clearance">V₀, m³, above 0.</param>
    /// <param name="swept">Volume that the piston sweeps, m³, not below 0.</param>
    /// <param name="moves">Absolute pressure at which it begins to move, Pa.</param>
    /// <param name="out">Absolute pressure at which it is out, Pa, above <paramref name="moves"/>.</param>
    /// <param name="specificEnergy">R·T, J/kg.</param>
    public static double[] ParametersOf(double clearance, double swept, double moves, double @out, double specificEnergy)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(clearance);
        ArgumentOutOfRangeException.ThrowIfNegative(swept);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(@out, moves);
        double first = specificEnergy / clearance;
        double third = specificEnergy / (clearance + swept);
        double begin = moves / first;
        double end = @out / third;
        double second = (@out - moves) / (end - begin);
        double delta = Math.Min(0.005 * begin, (end - begin) / 2);
        return [first, second - first, third - second, begin, end, delta, 0.5 / delta];
    }

    /// <summary>kg in it at a pressure; the corners not rounded.</summary>
    /// <param name="sheet">As from <see cref="ParametersOf"/>.</param>
    /// <param name="pressure">Pa absolute.</param>
    public static double AmountAt(ReadOnlySpan<double> sheet, double pressure)
    {
        double atBegin = sheet[0] * sheet[3];
        double second = sheet[0] + sheet[1];
        double atEnd = atBegin + (second * (sheet[4] - sheet[3]));
        return pressure <= atBegin ? pressure / sheet[0]
            : pressure <= atEnd ? sheet[3] + ((pressure - atBegin) / second)
            : sheet[4] + ((pressure - atEnd) / (second + sheet[2]));
    }
}
