using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A closed line that holds liquid and air: how a suction line loses and regains its prime. Amounts: liquid [kg], air [kg]; potentials: pressure p [Pa
/// absolute] and the void share a of the volume, 0…1. The air is an ideal gas at constant temperature, the walls give: V(p) = V₁ + B·p.
/// </summary>
/// <remarks>
/// Where no air is, a void still opens when liquid is drawn out: it bears the residual pressure r (vapour, gas out of solution) like a gas that fills V at r.
/// So liquid/ρ = (1 − a)·V and air·R·T = (a·p − r)·V, hence B·p² − x·p − A = 0 with x = liquid/ρ − V₁ + B·r and A = air·R·T + r·V₁: one
/// quadratic, its greater root. A full line at 1 bar with r = 10 Pa shows a = 1e-4; an emptied one falls to r, never to zero. The capacities have determinant
/// ρV(B·p + A/p)/RT > 0. Where a step leaves less air than none by more than half the residual, A goes on as a hyperbola towards zero. Derived;
/// ideal gas law. Parameters: 1/ρ [m³/kg], RT [J/kg], B [m³/Pa], V₁ [m³], r [Pa].
/// </remarks>
public readonly struct LiquidAirLine : IStore
{
    /// <summary>Usual residual pressure, Pa: a line drawn down to 1 kPa, about the vapour pressure of a light oil, then has a void of a hundredth.</summary>
    public const double ResidualPressure = 10;

    public static int Amounts => 2;

    public static int Parameters => 5;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        T inverseDensity = k;
        T rt = Unsafe.Add(ref k, 1);
        T give = Unsafe.Add(ref k, 2);
        T still = Unsafe.Add(ref k, 3);
        T residual = Unsafe.Add(ref k, 4);
        T liquid = m * inverseDensity;
        T gas = Gas(Unsafe.Add(ref m, 1) * rt, residual * still, out T gasSlope);
        T x = liquid - still + (give * residual);
        T t = T.Abs(x) + T.Sqrt((x * x) + (T.Of(4) * give * gas));
        T pressure = T.Select(T.Less(x, T.Of(0)), (gas + gas) / t, t / (give + give));
        T volume = still + (give * pressure);
        T filled = liquid / volume;
        p = pressure;
        Unsafe.Add(ref p, 1) = T.Of(1) - filled;
        T density = T.Of(1) / inverseDensity;
        T perGas = T.Of(1) / (rt * gasSlope);
        c = density * filled * give;
        Unsafe.Add(ref c, 1) = -(density * volume);
        Unsafe.Add(ref c, 2) = (((T.Of(1) - filled) * (volume + (give * pressure))) - (residual * give)) * perGas;
        Unsafe.Add(ref c, 3) = pressure * volume * perGas;
    }

    /// <summary>The sheet of a line.</summary>
    /// <param name="volume">m³, at atmospheric pressure.</param>
    /// <param name="density">Of the liquid, kg/m³.</param>
    /// <param name="elasticity">Share by which volume and liquid together give with pressure, 1/Pa, below 1/(1 bar): 1e-9 in steel, 1e-8…1e-7 with hoses.</param>
    /// <param name="temperature">K.</param>
    /// <param name="residualPressure">r, Pa.</param>
    public static double[] ParametersOf(
        double volume, double density, double elasticity, double temperature = Physical.ReferenceAirTemperature, double residualPressure = ResidualPressure)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volume);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(density);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(elasticity);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(residualPressure);
        double give = volume * elasticity;
        double still = volume - (give * Physical.Atmosphere);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(still, nameof(elasticity));
        return [1 / density, Physical.AirGasConstant * temperature, give, still, residualPressure];
    }

    /// <summary>The amounts of a line at a pressure [Pa] with a share of its volume full of air.</summary>
    /// <param name="parameters">As <see cref="ParametersOf"/> gives them.</param>
    /// <param name="air">0…1; the least that can be is a little above 0, for then there is still the residual void.</param>
    public static double[] AmountsAt(double[] parameters, double pressure, double air)
    {
        double volume = parameters[3] + (parameters[2] * pressure);
        double share = Math.Max(air, parameters[4] / pressure);
        return [(1 - share) * volume / parameters[0], ((share * pressure) - parameters[4]) * volume / parameters[1]];
    }

    /// <summary>air·R·T + r·V₁, kept above zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Gas<T>(T air, T residual, out T slope)
        where T : struct, IReal<T>
    {
        T half = T.Of(0.5) * residual;
        T gas = air + residual;
        T shrunk = half / (residual - T.Min(gas, half));
        T plain = T.LessOrEqual(half, gas);
        slope = T.Select(plain, T.Of(1), shrunk * shrunk);
        return T.Select(plain, gas, half * shrunk);
    }
}
