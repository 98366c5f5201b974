using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Formulas;

/// <summary>Eight values for each id.</summary>
internal readonly struct LaneValues(double[][] lanes) : IFormulaValues<Lanes>
{
    public Lanes ValueOf(int id) => new(System.Runtime.Intrinsics.Vector512.Create(
        lanes[0][id], lanes[1][id], lanes[2][id], lanes[3][id], lanes[4][id], lanes[5][id], lanes[6][id], lanes[7][id]));
}
