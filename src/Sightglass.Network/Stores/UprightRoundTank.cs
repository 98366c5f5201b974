using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Stores;

/// <summary>
/// A round tank standing on its flat end: a <see cref="PrismaticTank"/> with a round floor. Exact on the level and, tilted, while the floor is wet all over
/// (the centre's height is the mean depth for any floor with a centre); drier than that the floor counts as a rectangle of the same area and length.
/// </summary>
public static class UprightRoundTank
{
    /// <summary>The sheet, for <see cref="PrismaticTank"/>.</summary>
    /// <param name="radius">m.</param>
    /// <param name="depth">m, more than the diameter times the tilt.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="tilt">tanθ.</param>
    /// <param name="surfacePressure">Pa absolute.</param>
    /// <param name="riserArea">Section of the vent riser, m².</param>
    public static double[] ParametersOf(
        double radius, double depth, double density, double tilt = 0, double surfacePressure = Physical.Atmosphere, double riserArea = 5e-4) =>
        PrismaticTank.ParametersOf(Math.PI * radius * radius, 2 * radius, depth, density, tilt, surfacePressure, riserArea);
}
