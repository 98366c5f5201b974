using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Stores;

/// <summary>A number that follows another one with a lag: amount and potential are the same. No parameters.</summary>
public readonly struct FollowerStore : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        p = m;
        c = T.Of(1);
    }
}
