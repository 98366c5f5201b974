using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws;

/// <summary>
/// How a path's flows follow from the potentials it sees. Written once, for one number or eight lanes.
/// A law must be finite everywhere (also at equal and at zero potentials), non-decreasing in its first potential and
/// non-increasing in its second, and continuous with its first derivative in every potential.
/// </summary>
/// <remarks>
/// All arguments are references to the first of so many values in a row:
/// <c>p</c> <see cref="Potentials"/> potentials (first the one it comes from, second the one it goes to, then pilots),
/// <c>k</c> <see cref="Parameters"/> fixed parameters, <c>u</c> <see cref="Inputs"/> inputs (openings, speeds, demands),
/// <c>q</c> <see cref="Flows"/> results (positive from the first end to the second, amount per second),
/// <c>dq</c> <see cref="Flows"/>×<see cref="Potentials"/> derivatives, flow by flow.
/// </remarks>
public interface ILaw
{
    /// <summary>No law moves more amounts.</summary>
    const int MostFlows = 2;

    /// <summary>How many potentials it sees, 1…6.</summary>
    static abstract int Potentials { get; }

    /// <summary>How many amounts it moves, 1…<see cref="MostFlows"/>.</summary>
    static abstract int Flows { get; }

    static abstract int Parameters { get; }

    /// <summary>How many inputs it has, 0…6.</summary>
    static abstract int Inputs { get; }

    static abstract void Evaluate<T>(ref T p, ref T k, ref T u, ref T q, ref T dq)
        where T : struct, IReal<T>;
}
