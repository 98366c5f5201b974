using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;

namespace Sightglass.Plant.Rules;

/// <summary>Hands a row's formula the values of quantities by their ids, SI.</summary>
internal readonly struct QuantityValues(double[] values) : IFormulaValues<Scalar>
{
    public Scalar ValueOf(int id) => new(values[id]);

    /// <summary>Limits are met within this share of the quantities compared: <c>140 psi + 15 psi</c> and <c>155 psi</c> are the same, to the last bit they need not be.</summary>
    public const double Slack = 1e-9;

    /// <summary>Whether a condition holds.</summary>
    public static bool Holds(Formula condition, double[] values)
    {
        double scale = 0;
        foreach (FormulaName n in condition.NamesUsed)
        {
            scale = !n.IsCondition && n.Dimension == condition.Dimension && double.IsFinite(values[n.Id]) ? Math.Max(scale, Math.Abs(values[n.Id])) : scale;
        }

        return Of(condition, values) >= -Slack * scale;
    }

    public static double Of(Formula formula, double[] values)
    {
        QuantityValues given = new(values);
        return formula.Evaluate<Scalar, QuantityValues>(ref given).V;
    }
}
