using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Groups;

/// <summary>A test's own open tank with upright walls: p = p₀ + g·m/A. Parameters: p₀ [Pa], A [m²].</summary>
internal readonly struct UprightTank : IStore
{
    public const double Gravity = 9.80665;

    public static int Amounts => 1;

    public static int Parameters => 2;

    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        c = Unsafe.Add(ref k, 1) / T.Of(Gravity);
        p = k + (m / c);
    }
}
