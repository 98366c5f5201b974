using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Calculators.Sheets;

namespace Sightglass.Paper.Papers;

/// <summary>The small plot of a calculation.</summary>
public static class CalculatorPicture
{
    private static readonly (double Width, double Height) s_wide = (480, 270);
    private static readonly (double Width, double Height) s_narrow = (352, 240);

    /// <summary>The plot as SVG, in the language that is spoken.</summary>
    /// <param name="calculation">What was worked out.</param>
    /// <param name="system">Units of both scales; null for those that were written and those of the sheet.</param>
    /// <param name="svg">How it is written.</param>
    /// <param name="narrow">For the width of a phone, so that its words stay as large as they must be.</param>
    public static string Of(Calculation calculation, UnitSystem? system, SvgOptions svg, bool narrow = false)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        CalculatorCurve curve = CalculatorCurve.From(calculation, system);
        (double width, double height) = narrow ? s_narrow : s_wide;
        return CurveChartDrawing.Render(
            new()
            {
                Width = width,
                Height = height,
                Across = Named(curve.Along, curve.AlongUnit),
                Upwards = Named(curve.Of, curve.OfUnit),
                Points = curve.Points,
                Mark = curve.Mark,
                MarkWords = (QuantityFormat.Text(curve.AlongUnit.ToSi(curve.Mark.X), curve.AlongUnit), QuantityFormat.Text(curve.OfUnit.ToSi(curve.Mark.Y), curve.OfUnit)),
                Up = curve.Up,
                IsCounted = curve.Along.IsWhole,
            },
            svg);
    }

    private static string Named(CalculatorValue value, Unit unit) =>
        QuantityFormat.Symbol(unit) is { Length: > 0 } symbol ? $"{CalculatorWord.Of(value.Name)}, {symbol}" : CalculatorWord.Of(value.Name);
}
