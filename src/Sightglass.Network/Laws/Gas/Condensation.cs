using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// Water that falls out where a piston machine presses air into a store which cools it: each kg of air brings x kg of vapour and keeps what saturates it at the store's pressure, so
/// ṁ·(x − r·e/(p − e)) becomes liquid, ṁ as of <see cref="GasPump"/>; a drain blows out what there is with a lag. Source: mass balance with Dalton's law, derived.
/// </summary>
/// <remarks>
/// Sees the liquid twice, then the store's pressure. With c₀ = r·e/x, so that e + c₀ is the pressure at which water begins to fall out and x − r·e/(p − e) = x·(p − e − c₀)/(p − e):
/// parameters swept/(RT) [kg/rev/Pa], 1 + c, c, pressure of the intake [Pa], 1/τ of the drain [1/s]; inputs speed [rev/s], x, c₀ [Pa, above 0], e [Pa], opening of the drain.
/// Rounded over ±<see cref="Corner"/> where it begins. Its flow is liquid, kg/s, and comes from nowhere: the vapour is not carried in the air's amount.
/// </remarks>
public readonly struct Condensation : ILaw
{
    /// <summary>Pa.</summary>
    public const double Corner = 1000;

    public static int Potentials => 3;

    public static int Flows => 1;

    public static int Parameters => 5;

    public static int Inputs => 5;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T pressure = Unsafe.Add(ref p, 2);
        T clearance = Unsafe.Add(ref k, 2);
        T swept = k * u * Unsafe.Add(ref u, 1);
        T brought = swept * Smooth.Positive((Unsafe.Add(ref k, 1) * Unsafe.Add(ref k, 3)) - (clearance * pressure), T.Of(GasPump.Corner), T.Of(0.5 / GasPump.Corner), out T pumps);
        T begins = Unsafe.Add(ref u, 2);
        T above = Smooth.Positive(pressure - Unsafe.Add(ref u, 3) - begins, T.Of(Corner), T.Of(0.5 / Corner), out T rises);
        T inverse = T.Of(1) / (begins + above);
        T share = above * inverse;
        T drain = Unsafe.Add(ref k, 4) * Unsafe.Add(ref u, 4);
        q = (brought * share) - (drain * Unsafe.Add(ref p, 1));
        dq = T.Of(0);
        Unsafe.Add(ref dq, 1) = -drain;
        Unsafe.Add(ref dq, 2) = (brought * begins * inverse * inverse * rises) - (swept * clearance * pumps * share);
    }

    /// <summary>The sheet.</summary>
    /// <param name="pump">Of the machine: <see cref="GasPump.ParametersOf"/>.</param>
    /// <param name="intake">Pressure from which it draws, Pa.</param>
    /// <param name="drainTime">In which the open drain blows out all but 1/e of the liquid, s.</param>
    public static double[] ParametersOf(double[] pump, double intake, double drainTime)
    {
        ArgumentNullException.ThrowIfNull(pump);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(drainTime);
        return [.. pump, intake, 1 / drainTime];
    }
}
