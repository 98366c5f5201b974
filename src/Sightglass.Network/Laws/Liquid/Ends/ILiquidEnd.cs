using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid.Ends;

/// <summary>How a path meets the store at one of its ends: what pressure its mouth feels and what would be drawn in. Same rules as for <see cref="ILaw"/>.</summary>
public interface ILiquidEnd
{
    /// <summary>How many of the store's potentials it sees, 1 or 2.</summary>
    static abstract int Potentials { get; }

    static abstract int Parameters { get; }

    static abstract void Evaluate<T>(ref T p, ref T k, out LiquidEnd<T> end)
        where T : struct, IReal<T>;
}
