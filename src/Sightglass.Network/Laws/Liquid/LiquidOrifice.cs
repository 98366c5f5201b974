using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// Flow of a liquid through an opening or a valve: ṁ = u·Cd·A·√(2ρ)·x/√(|x|+ε), x = pa + offset − pb.
/// Source: Torricelli / orifice equation (White, Fluid Mechanics, from memory).
/// </summary>
/// <remarks>
/// ε is the pressure difference at which a sharp-edged opening turns laminar, so that the slope at zero is that of creeping flow
/// (<see cref="Transition"/>); above it the flow is too low by a share of less than ε/(2|x|): 2e-6 at 1 cm of head through 25 mm in oil of 3 mm²/s.
/// Parameters: K = Cd·A·√(2ρ) [kg/s/√Pa], ε [Pa], offset [Pa]. Input: opening 0…1.
/// </remarks>
public readonly struct LiquidOrifice : ILaw
{
    /// <summary>
    /// Reynolds number below which a sharp-edged opening is laminar: 9.3 (Merritt, Hydraulic Control Systems, from memory), which meets the
    /// creeping flow πd³Δp/(50.4μ) (Wuest 1954, from memory) within a twentieth.
    /// </summary>
    public const double TransitionReynolds = 10;

    /// <summary>Discharge coefficient of a sharp-edged opening (any text of hydraulics).</summary>
    public const double SharpEdged = 0.62;

    /// <summary>Where the static head at the first end stands in the sheet: what a change of tilt changes.</summary>
    public const int OffsetParameter = 2;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T x = p + Unsafe.Add(ref k, 2) - Unsafe.Add(ref p, 1);
        T conductance = k * u;
        q = conductance * Smooth.SignedRoot(x, Unsafe.Add(ref k, 1), out T slope);
        T d = conductance * slope;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }

    /// <summary>The sheet of an opening.</summary>
    /// <param name="discharge">Cd, 0…1.</param>
    /// <param name="area">m².</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="viscosity">Kinematic, m²/s.</param>
    /// <param name="offset">Pa added at the first end: ρ·g times its height over the second one.</param>
    public static double[] ParametersOf(double discharge, double area, double density, double viscosity, double offset = 0) =>
        [discharge * area * Math.Sqrt(2 * density), Transition(discharge, area, density, viscosity), offset];

    /// <summary>The sheet of a valve with a flow coefficient.</summary>
    /// <param name="kv">m³/h of water at a difference of 1 bar (IEC 60534).</param>
    public static double[] OfFlowCoefficient(double kv, double density, double viscosity, double offset = 0) =>
        ParametersOf(SharpEdged, AreaOf(kv), density, viscosity, offset);

    /// <summary>Kv [m³/h at 1 bar] of a valve with a flow coefficient Cv [US gal/min at 1 psi], by the units alone: Cv/1.1560992.</summary>
    public static double KvOfCv(double cv) => cv * 0.003785411784 * 60 * Math.Sqrt(1e5 / 6894.757293168);

    /// <summary>Area of the sharp-edged opening that passes as much as a valve with flow coefficient Kv [m³/h]: m².</summary>
    public static double AreaOf(double kv) => kv / 3600 * Math.Sqrt(1000 / (2 * 1e5)) / SharpEdged;

    /// <summary>ε = ρ/2·(Re·ν/(Cd·d))²: the pressure difference at which the flow has <see cref="TransitionReynolds"/>, Pa.</summary>
    public static double Transition(double discharge, double area, double density, double viscosity)
    {
        double diameter = Math.Sqrt(4 * area / Math.PI);
        double speed = TransitionReynolds * viscosity / (discharge * diameter);
        return density / 2 * speed * speed;
    }
}
