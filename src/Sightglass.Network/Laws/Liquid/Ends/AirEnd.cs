using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>The open air: what runs out is gone, what is drawn in is air. Sees its pressure. Parameters: offset [Pa].</summary>
public readonly struct AirEnd : ILiquidEnd
{
    public static int Potentials => 1;

    public static int Parameters => 1;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, out LiquidEnd<T> end)
        where T : struct, IReal<T>
    {
        end = default;
        end.Pressure = p + k;
        end.PressureSlope = T.Of(1);
        end.Air.Value = end.Pressure;
        end.Air.Slope = T.Of(1);
    }
}
