using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>
/// A <see cref="Stores.LiquidAirLine"/>: liquid and void leave it as they lie in it, mixed. Sees its pressure and void share. Of the void only what the residual
/// pressure does not fill is air: (a·p − r)/RT. Parameters: offset [Pa], residual pressure r [Pa] as in the store.
/// </summary>
public readonly struct LineEnd : ILiquidEnd
{
    public static int Potentials => 2;

    public static int Parameters => 2;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Evaluate<T>(ref T p, ref T k, out LiquidEnd<T> end)
        where T : struct, IReal<T>
    {
        T share = Unsafe.Add(ref p, 1);
        end = default;
        end.Pressure = p + k;
        end.PressureSlope = T.Of(1);
        end.Wet.Value = T.Of(1) - share;
        end.Wet.SecondSlope = T.Of(-1);
        end.Air.Value = (share * p) - Unsafe.Add(ref k, 1);
        end.Air.Slope = share;
        end.Air.SecondSlope = p;
    }
}
