using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Liquid.Ends;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A liquid law between ends that may run dry: moves the liquid only (air that goes along is nobody's). Give it a <see cref="TankPort"/> for an outlet, a hole or
/// an overflow, a <see cref="FullEnd"/> for a line that is always full.
/// </summary>
/// <remarks>
/// Sees the potentials of the first end, of the second, then the law's pilots. Parameters: the law's, the first end's, the second's, then 1/(2·blend flow);
/// inputs: the law's. Monotone outside ± the blend flow, where what is drawn in changes sides; with equal contents everywhere.
/// </remarks>
public readonly struct LiquidPath<TFrom, TLaw, TTo> : ILaw
    where TFrom : struct, ILiquidEnd
    where TLaw : struct, ILaw
    where TTo : struct, ILiquidEnd
{
    public static int Potentials => TFrom.Potentials + TTo.Potentials + TLaw.Potentials - 2;

    public static int Flows => 1;

    public static int Parameters => TLaw.Parameters + TFrom.Parameters + TTo.Parameters + 1;

    public static int Inputs => TLaw.Inputs;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out Through<T, TFrom, TLaw, TTo> through);
        through.Run(ref p, ref k, ref u);
        through.Liquid(ref q, ref dq);
    }

    /// <summary>The sheet of a path.</summary>
    /// <param name="law">The sheet of the law.</param>
    /// <param name="from">The sheet of the first end.</param>
    /// <param name="to">The sheet of the second end.</param>
    /// <param name="blendFlow">kg/s below which what is drawn in comes from both ends: far less than any flow that matters.</param>
    public static double[] ParametersOf(double[] law, double[] from, double[] to, double blendFlow = Mixing.BlendFlow) =>
        [.. law, .. from, .. to, Mixing.PerBlend(blendFlow)];
}
