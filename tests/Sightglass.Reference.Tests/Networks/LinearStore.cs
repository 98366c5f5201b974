using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>A store of constant capacity: m = V·p. Parameter: V.</summary>
public readonly struct LinearStore : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        p = m / k;
        c = k;
    }
}
