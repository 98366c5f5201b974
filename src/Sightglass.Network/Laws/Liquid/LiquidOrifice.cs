using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// Flow of a liquid through an opening: ṁ = u·Cd·A·√(2ρ)·x/√(|x|+ε), x = pa + offset − pb.
/// Source: Torricelli / orifice equation (White, Fluid Mechanics, from memory); ε is derived from the laminar transition
/// by the caller.
/// </summary>
/// <remarks>Parameters: K = Cd·A·√(2ρ) [kg/s/√Pa], ε [Pa], offset [Pa]. Input: opening 0…1.</remarks>
public readonly struct LiquidOrifice : ILaw
{
    public static int Potentials => 2;

    public static int Flows => 1;

    public static int Parameters => 3;

    public static int Inputs => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        T x = p + Unsafe.Add(ref k, 2) - Unsafe.Add(ref p, 1);
        T conductance = k * u;
        q = conductance * Smooth.SignedRoot(x, Unsafe.Add(ref k, 1), out T slope);
        T d = conductance * slope;
        dq = d;
        Unsafe.Add(ref dq, 1) = -d;
    }
}
