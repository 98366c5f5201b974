using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Stores;

/// <summary>
/// How a store's potentials follow from its amounts. Written once, for one number or eight lanes.
/// </summary>
/// <remarks>
/// <c>m</c>: <see cref="Amounts"/> amounts; <c>k</c>: <see cref="Parameters"/> parameters;
/// <c>p</c>: as many potentials; <c>c</c>: the capacity matrix ∂m/∂p, row by row, with a floor so that it can always be inverted.
/// </remarks>
public interface IStore
{
    /// <summary>1 or 2.</summary>
    static abstract int Amounts { get; }

    static abstract int Parameters { get; }

    static abstract void Evaluate<T>(ref T m, ref T k, ref T p, ref T c)
        where T : struct, IReal<T>;
}
