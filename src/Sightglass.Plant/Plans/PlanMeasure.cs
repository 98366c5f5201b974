using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>A measure of the book, ready to be worked out.</summary>
/// <param name="Written">As the book has it.</param>
/// <param name="Signal">Its value on the running machine; a condition is a margin, true when ≥ 0.</param>
/// <param name="Constant">Its value where it is made only of what the book gives, SI; null for one that a machine must run for.</param>
public sealed record PlanMeasure(Measure Written, FormulaSignal Signal, double? Constant)
{
    public Formula Formula => Signal.Formula;

    internal static PlanMeasure Of(Measure written, Formula formula, MeasureScope scope)
    {
        double?[] values = [.. formula.NamesUsed.Select(n => scope.ValueOf(n.Id))];
        if (values.Any(v => v is null))
        {
            return new(written, new(formula), null);
        }

        Given given = new(formula, values);
        return new(written, new(formula), formula.Evaluate<Scalar, Given>(ref given).V);
    }

    private readonly struct Given(Formula formula, double?[] values) : IFormulaValues<Scalar>
    {
        public Scalar ValueOf(int id)
        {
            for (int i = 0; i < values.Length; i++)
            {
                if (formula.NamesUsed[i].Id == id)
                {
                    return new(values[i]!.Value);
                }
            }

            return new(double.NaN);
        }
    }
}
