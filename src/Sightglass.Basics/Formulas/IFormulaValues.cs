using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Formulas;

/// <summary>Where an evaluating formula finds the values of its names (SI units; facts as margins, true when ≥ 0).</summary>
public interface IFormulaValues<T>
    where T : struct, IReal<T>
{
    T ValueOf(int id);
}
