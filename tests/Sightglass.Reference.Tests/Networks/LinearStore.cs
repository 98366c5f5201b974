using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>A store of constant capacity: m = V·p. Parameters: V, 1/V.</summary>
public readonly struct LinearStore : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        p = m * Unsafe.Add(ref k, 1);
        c = k;
    }

    public static double[] ParametersOf(double capacity) => [capacity, 1 / capacity];
}
