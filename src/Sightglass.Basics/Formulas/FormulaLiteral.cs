using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>A number with its unit as it stands in a formula.</summary>
internal readonly record struct FormulaLiteral(double Written, Unit Unit)
{
    public double Si => Unit.ToSi(Written);
}
