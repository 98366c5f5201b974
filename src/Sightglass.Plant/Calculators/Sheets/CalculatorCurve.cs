using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>The plot of a calculation worked out: the result over the input, in the units in which they are shown.</summary>
/// <param name="Along">What runs.</param>
/// <param name="AlongUnit">Its unit.</param>
/// <param name="Of">What follows.</param>
/// <param name="OfUnit">Its unit.</param>
/// <param name="Points">In these units, x rising; gaps where there is no answer.</param>
/// <param name="Mark">What was put in and what came out.</param>
/// <param name="Up">Least and greatest value to show: where a curve runs away it is cut.</param>
public sealed record CalculatorCurve(
    CalculatorValue Along, Unit AlongUnit, CalculatorValue Of, Unit OfUnit, ImmutableArray<(double X, double Y)> Points, (double X, double Y) Mark, (double From, double To) Up)
{
    private const int Steps = 120;

    /// <summary>How many times the result that came out the curve may stand above it before it is cut.</summary>
    private const double Room = 4;

    /// <summary>The plot of a calculation.</summary>
    public static CalculatorCurve From(Calculation c, UnitSystem? system = null)
    {
        ArgumentNullException.ThrowIfNull(c);
        CalculatorPlot plot = c.Sheet.Plot;
        int along = IndexOf(c.Sheet.Inputs, plot.Along), of = IndexOf(c.Sheet.Results, plot.Of);
        CalculatorValue input = c.Sheet.Inputs[along];
        Unit across = UnitPairs.In(c.Given[along].Value.Unit, system), up = UnitPairs.In(UnitTable.Get(c.Sheet.Results[of].Example), system);
        double given = c.Given[along].Value.Si;
        double from = Math.Min(CalculatorReader.SiOf(plot.From, input), given), to = Math.Max(CalculatorReader.SiOf(plot.To, input), given);
        IEnumerable<double> xs = input.IsWhole
            ? Enumerable.Range((int)from, (int)(to - from) + 1).Select(x => (double)x)
            : Enumerable.Range(0, Steps + 1).Select(i => from + ((to - from) * i / Steps)).Append(given).Order();
        (double X, double Y) mark = (across.FromSi(given), up.FromSi(c.Results[of]));
        ImmutableArray<(double X, double Y)> points = [.. xs.Distinct().Select(x => (across.FromSi(x), up.FromSi(c.Sheet.Work(c.Values.SetItem(along, x))[of])))];
        return new(input, across, c.Sheet.Results[of], up, points, mark, Range(points, mark.Y));
    }

    private static int IndexOf(ImmutableArray<CalculatorValue> values, string name) =>
        values.Select((v, i) => (v.Name, i)).First(v => v.Name == name).i;

    private static (double From, double To) Range(ImmutableArray<(double X, double Y)> points, double mark)
    {
        double[] finite = [.. points.Select(p => p.Y).Where(double.IsFinite).Append(mark).Order()];
        double middle = finite[finite.Length / 2];
        double most = Math.Max(Math.Abs(mark), Math.Abs(middle)) * Room;
        (double low, double high) = (Math.Max(finite[0], -most), Math.Min(finite[^1], most));
        return high > low ? (Math.Min(low, low > 0 && low < high / 2 ? 0 : low), high) : (low - Math.Max(1, Math.Abs(low) * 0.1), high + Math.Max(1, Math.Abs(high) * 0.1));
    }
}
