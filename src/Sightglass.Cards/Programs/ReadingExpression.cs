using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Quantities;

namespace Sightglass.Cards.Programs;

/// <summary>A calculation with numbers that were read and written down: <c>P1 − P2</c>, <c>(A + B) / 2</c>. SI.</summary>
public sealed class ReadingExpression
{
    private readonly Formula _formula;

    /// <param name="formula">Its names' ids are indices of <see cref="CardProgram.Names"/>.</param>
    public ReadingExpression(Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        _formula = formula;
    }

    /// <summary>As written.</summary>
    public string Text => _formula.Text;

    public Dimension Dimension => _formula.Dimension;

    /// <summary>
    /// Whether raising every reading alike leaves it as it is: then it is a difference, and the zero of a scale (degF) does not count.
    /// </summary>
    public bool IsDifference
    {
        get
        {
            int count = _formula.NamesUsed.IsEmpty ? 0 : _formula.NamesUsed.Max(n => n.Id) + 1;
            double[] low = new double[count];
            double[] high = new double[count];
            Array.Fill(low, 300);
            Array.Fill(high, 301);
            return count > 0 && Math.Abs(Evaluate(high) - Evaluate(low)) < 1e-9;
        }
    }

    /// <summary>The value (SI) with the numbers written down so far, by index of <see cref="CardProgram.Names"/>.</summary>
    public double Evaluate(ReadOnlySpan<double> written)
    {
        Values values = new(written);
        return _formula.Evaluate<Scalar, Values>(ref values).V;
    }

    /// <summary>Index of the first number it needs that has not been read (is no number); −1 when all have.</summary>
    public int FirstUnread(ReadOnlySpan<double> written)
    {
        foreach (FormulaName name in _formula.NamesUsed)
        {
            if (double.IsNaN(written[name.Id]))
            {
                return name.Id;
            }
        }

        return -1;
    }

    public override string ToString() => Text;

    private readonly ref struct Values(ReadOnlySpan<double> written) : IFormulaValues<Scalar>
    {
        private readonly ReadOnlySpan<double> _written = written;

        public Scalar ValueOf(int id) => new(_written[id]);
    }
}
