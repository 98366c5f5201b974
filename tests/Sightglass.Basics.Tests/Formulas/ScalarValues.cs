using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tests.Formulas;

/// <summary>Values by id.</summary>
internal readonly struct ScalarValues(double[] values) : IFormulaValues<Scalar>
{
    public Scalar ValueOf(int id) => new(values[id]);
}
