using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Liquid.Ends;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// A liquid law between ends that may hold air: moves liquid and air. The law gives a volume flow as if all were liquid; what comes along is what stands at the
/// end the flow comes from. (That air passes an opening faster than liquid would is left out: an uncovered mouth draws as much volume, not more. And
/// a static head in an end's offset is that of liquid whatever flows: a line at rest keeps its column though its mouth is uncovered.)
/// </summary>
/// <remarks>
/// Flows: liquid [kg/s], air [kg/s]; the air of a tank or of the open belongs to a boundary. Sees the potentials of the first end, of the second, then the law's
/// pilots. Parameters: the law's, the first end's, the second's, 1/(2·blend flow), 1/(ρRT); inputs: the law's. Monotone as <see cref="LiquidPath{TFrom, TLaw, TTo}"/>.
/// </remarks>
public readonly struct MixedPath<TFrom, TLaw, TTo> : ILaw
    where TFrom : struct, ILiquidEnd
    where TLaw : struct, ILaw
    where TTo : struct, ILiquidEnd
{
    public static int Potentials => TFrom.Potentials + TTo.Potentials + TLaw.Potentials - 2;

    public static int Flows => 2;

    public static int Parameters => TLaw.Parameters + TFrom.Parameters + TTo.Parameters + 2;

    public static int Inputs => TLaw.Inputs;

    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out Through<T, TFrom, TLaw, TTo> through);
        through.Run(ref p, ref k, ref u);
        through.Liquid(ref q, ref dq);
        through.Air(Unsafe.Add(ref k, Parameters - 1), ref Unsafe.Add(ref q, 1), ref Unsafe.Add(ref dq, Potentials));
    }

    /// <summary>The sheet of a path.</summary>
    /// <param name="law">The sheet of the law.</param>
    /// <param name="from">The sheet of the first end.</param>
    /// <param name="to">The sheet of the second end.</param>
    /// <param name="density">Of the liquid, kg/m³.</param>
    /// <param name="temperature">Of the air, K.</param>
    /// <param name="blendFlow">kg/s below which what is drawn in comes from both ends: far less than any flow that matters.</param>
    public static double[] ParametersOf(
        double[] law,
        double[] from,
        double[] to,
        double density,
        double temperature = Common.Physical.ReferenceAirTemperature,
        double blendFlow = Mixing.BlendFlow) =>
        [.. law, .. from, .. to, Mixing.PerBlend(blendFlow), Mixing.AirPerPascal(density, temperature)];
}
