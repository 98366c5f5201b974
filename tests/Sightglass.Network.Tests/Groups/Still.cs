using Sightglass.Basics.Numbers;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Tests.Groups;

/// <summary>A test's own boundary of fixed pressure. Parameter: p [Pa].</summary>
internal readonly struct Still : IStore
{
    public static int Amounts => 1;

    public static int Parameters => 1;

    public static void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>
    {
        c = T.Of(1);
        p = k;
    }
}
