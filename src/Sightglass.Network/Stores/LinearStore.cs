using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A store whose potential rises in proportion to its amount: p = p₀ + (m − m₀)/C. An elastic line full of liquid (C = ρ·V·elasticity) or a
/// gas volume at constant temperature (C = V/RT, the ideal gas law).
/// </summary>
/// <remarks>Parameters: p₀ [Pa], m₀ [kg], C [kg/Pa], 1/C [Pa/kg].</remarks>
public readonly struct LinearStore : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        p = k + ((m - Unsafe.Add(ref k, 1)) * Unsafe.Add(ref k, 3));
        c = Unsafe.Add(ref k, 2);
    }

    /// <summary>The sheet of a store with <paramref name="amount"/> kg in it at <paramref name="pressure"/> Pa.</summary>
    /// <param name="capacity">kg/Pa, above zero.</param>
    public static double[] ParametersOf(double pressure, double amount, double capacity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(capacity);
        return [pressure, amount, capacity, 1 / capacity];
    }

    /// <summary>A line that liquid fills.</summary>
    /// <param name="volume">m³, at <paramref name="pressure"/>.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="elasticity">Share by which the contents grow with pressure, walls and liquid together, 1/Pa: 1e-9 in steel, 1e-8…1e-7 with hoses.</param>
    /// <param name="pressure">Pa absolute.</param>
    public static double[] LiquidLine(double volume, double density, double elasticity, double pressure) =>
        ParametersOf(pressure, volume * density, volume * density * elasticity);

    /// <summary>A gas volume at constant temperature.</summary>
    /// <param name="volume">m³.</param>
    /// <param name="temperature">K.</param>
    /// <param name="gasConstant">J/(kg·K).</param>
    public static double[] IsothermalGas(double volume, double temperature, double gasConstant = Physical.AirGasConstant) =>
        ParametersOf(0, 0, volume / (gasConstant * temperature));
}
