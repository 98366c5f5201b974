using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Reference.Tests.Laws;

/// <summary><c>fric</c>: q = K·x/√(|x|+ε), x = pa² − pb². Parameters: K, ε.</summary>
public readonly struct FrictionLaw : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 2;

    public static int Inputs => 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T a = p;
        T b = Unsafe.Add(ref p, 1);
        q = k * Smooth.SignedRoot((a * a) - (b * b), Unsafe.Add(ref k, 1), out T slope);
        T d = k * slope;
        dq = (a + a) * d;
        Unsafe.Add(ref dq, 1) = -((b + b) * d);
    }
}
