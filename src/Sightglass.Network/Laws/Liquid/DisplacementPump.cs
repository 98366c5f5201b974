using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A gear or vane pump: displacement times speed, less slip in proportion to the pressure it works against, less what a built-in relief valve lets back:
/// ṁ = ρ·D·n·s(pa) − ρ·G·Δp − R·max(0, Δp − p_r), Δp = pb − pa − offset. Source: displacement with linear slip (A1-06b; Karassik, Pump Handbook, from memory).
/// </summary>
/// <remarks>
/// s is a smooth step over the suction pressure, from nothing at the vapour pressure: a pump draws no vacuum. The relief's corner is rounded over ±5 % of its set
/// pressure (too much by a quarter of that times R at most, at p_r). Parameters: ρ·D [kg/rev], ρ·G [kg/s/Pa], p_r [Pa], rounding [Pa], R [kg/s/Pa],
/// vapour pressure [Pa], 1/fade [1/Pa], offset [Pa]. Input: speed [rev/s], not below 0. At rest it leaks back by its slip.
/// </remarks>
public readonly struct DisplacementPump : ILaw
{
    /// <summary>Where ρ·G stands in the sheet: wear raises it.</summary>
    public const int SlipParameter = 1;

    private const double ReliefRounding = 0.05;

    /// <summary>Where the static head at the first end stands in the sheet: what a change of tilt changes.</summary>
    public const int OffsetParameter = 7;

    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 8;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T slip = Unsafe.Add(ref k, 1);
        T relief = Unsafe.Add(ref k, 4);
        T perFade = Unsafe.Add(ref k, 6);
        T against = Unsafe.Add(ref p, 1) - p - Unsafe.Add(ref k, 7);
        T swept = k * u;
        T filling = Smooth.Step((p - Unsafe.Add(ref k, 5)) * perFade, out T fillingSlope);
        T over = Smooth.Positive(against - Unsafe.Add(ref k, 2), Unsafe.Add(ref k, 3), out T overSlope);
        q = (swept * filling) - (slip * against) - (relief * over);
        T back = slip + (relief * overSlope);
        dq = (swept * fillingSlope * perFade) + back;
        Unsafe.Add(ref dq, 1) = -back;
    }

    /// <summary>The sheet of a pump.</summary>
    /// <param name="displacement">D, m³/rev.</param>
    /// <param name="slip">G, m³/s/Pa.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="reliefPressure">Pressure difference at which the built-in valve begins to open, Pa, above 0.</param>
    /// <param name="reliefFlow">m³/s that it lets back for each 10 % above that: about the pump's flow.</param>
    /// <param name="vapourPressure">Pa absolute.</param>
    /// <param name="fade">From the vapour pressure to full filling, Pa, above 0.</param>
    /// <param name="offset">Pa added at the first end.</param>
    public static double[] ParametersOf(
        double displacement,
        double slip,
        double density,
        double reliefPressure,
        double reliefFlow,
        double vapourPressure = 1000,
        double fade = 2000,
        double offset = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(reliefPressure);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fade);
        return
        [
            density * displacement, density * slip, reliefPressure, ReliefRounding * reliefPressure, density * reliefFlow / (0.1 * reliefPressure),
            vapourPressure, 1 / fade, offset,
        ];
    }
}
