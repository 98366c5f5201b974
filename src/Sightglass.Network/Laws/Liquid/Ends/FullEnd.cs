using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>A line that is always full, or a boundary full of liquid. Sees its pressure. Parameters: offset [Pa].</summary>
public readonly struct FullEnd : ILiquidEnd
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
        end.Wet.Value = T.Of(1);
    }
}
