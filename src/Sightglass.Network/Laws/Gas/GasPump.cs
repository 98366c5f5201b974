using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A piston machine that draws gas from the first end and presses it into the second: ṁ = n·D·ρ_in·η, η = 1 + c − c·pb/pa, the volumetric efficiency with clearance c
/// and isothermal re-expansion, so ṁ = n·D/(RT)·(pa·(1 + c) − c·pb), never below zero. Source: clearance volumetric efficiency (any text of thermodynamics; from memory).
/// </summary>
/// <remarks>
/// Where it can no longer deliver, the corner is rounded over ±<see cref="Corner"/> (too much by a quarter of that times n·D/RT, there). Its own
/// valves let nothing back. Parameters: D/(RT) [kg/rev/Pa], 1 + c, c. Input: speed [rev/s], not below 0.
/// </remarks>
public readonly struct GasPump : ILaw
{
    /// <summary>Pa of intake pressure.</summary>
    public const double Corner = 100;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T swept = k * u;
        T grown = Unsafe.Add(ref k, 1);
        T clearance = Unsafe.Add(ref k, 2);
        q = swept * Smooth.Positive((grown * p) - (clearance * Unsafe.Add(ref p, 1)), T.Of(Corner), T.Of(0.5 / Corner), out T slope);
        T d = swept * slope;
        dq = d * grown;
        Unsafe.Add(ref dq, 1) = -(d * clearance);
    }

    /// <summary>The sheet of a machine.</summary>
    /// <param name="displacement">D, m³/rev, with what leaks past the pistons already taken off.</param>
    /// <param name="clearance">c, dead volume over swept volume: mostly 0.03…0.1.</param>
    /// <param name="temperature">Of the gas drawn in, K.</param>
    public static double[] ParametersOf(
        double displacement, double clearance, double temperature = Physical.ReferenceAirTemperature, double gasConstant = Physical.AirGasConstant)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(clearance);
        return [displacement / (gasConstant * temperature), 1 + clearance, clearance];
    }
}
