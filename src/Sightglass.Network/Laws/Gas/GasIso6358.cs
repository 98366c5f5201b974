using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A pneumatic component with sonic conductance C and critical pressure ratio b: ṁ = C·p₁·ρ₀·√(T₀/T₁) when p₂/p₁ ≤ b, else that times √(1 − ((p₂/p₁ − b)/(1 − b))²), in
/// either direction. Source: ISO 6358-1 (flow formula read in documentation of general modelling tools that quote it; ρ₀, T₀ from memory).
/// </summary>
/// <remarks>
/// Exact above a flow of <see cref="Rounding"/> (a share of the choked one); below it linear in the pressure difference. Parameters: C·ρ₀·√(T₀/T) [kg/s/Pa],
/// 1/(1 − b), rounding. Input: opening 0…1, a share of C.
/// </remarks>
public readonly struct GasIso6358 : ILaw
{
    /// <summary>
    /// Usual rounding: below a thousandth of the choked flow, a pressure difference of a quarter of a millionth, the flow is linear. A vessel that fills to
    /// equal pressure is late by half a thousandth of the whole time, the tolerance of A2-05. (A real opening turns laminar far lower still.)
    /// </summary>
    public const double Rounding = 1e-3;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T conductance = k * u;
        q = conductance * GasThrough.Flow<T, EllipseCurve>(
            p, Unsafe.Add(ref p, 1), Unsafe.Add(ref k, 1), Unsafe.Add(ref k, 2), ref k, out T slopeA, out T slopeB);
        dq = conductance * slopeA;
        Unsafe.Add(ref dq, 1) = conductance * slopeB;
    }

    /// <summary>The sheet of a component.</summary>
    /// <param name="conductance">C, m³/(s·Pa) of reference air: 1 dm³/(s·bar) = 1e-8.</param>
    /// <param name="criticalRatio">b, 0 up to, not with, 1.</param>
    /// <param name="temperature">Upstream, K.</param>
    /// <param name="rounding">Share of the choked flow below which the law is linear.</param>
    public static double[] ParametersOf(
        double conductance, double criticalRatio, double temperature = Physical.ReferenceAirTemperature, double rounding = Rounding)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(criticalRatio);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(criticalRatio, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rounding);
        double atTemperature = conductance * Physical.ReferenceAirDensity * Math.Sqrt(Physical.ReferenceAirTemperature / temperature);
        return [atTemperature, 1 / (1 - criticalRatio), rounding];
    }

    /// <summary>C of a sharp-edged opening, m³/(s·Pa): Cd·A·ψ/(ρ₀·√(R·T₀)).</summary>
    /// <param name="discharge">Cd.</param>
    /// <param name="area">m².</param>
    public static double ConductanceOf(double discharge, double area) =>
        discharge * area * GasOrifice.ChokedFactor(Physical.AirHeatRatio)
        / (Physical.ReferenceAirDensity * Math.Sqrt(Physical.AirGasConstant * Physical.ReferenceAirTemperature));
}
