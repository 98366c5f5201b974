using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>The outside: a fixed potential. Parameter: that potential.</summary>
public readonly struct OutsideStore : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        p = k;
        c = T.Of(1);
    }
}
