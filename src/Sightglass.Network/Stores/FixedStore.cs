using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Stores;

/// <summary>
/// A boundary: its potential is given, whatever flows. Its amount only books what came and went.
/// The capacity is a formal 1 that nobody reads: rows of boundaries are not solved for.
/// </summary>
/// <remarks>Parameters: potential [Pa].</remarks>
public readonly struct FixedStore : IStore
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
