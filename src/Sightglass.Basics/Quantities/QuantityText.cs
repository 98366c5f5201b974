using Sightglass.Basics.Diagnostics;

namespace Sightglass.Basics.Quantities;

/// <summary>
/// Reads a value with its unit: <c>140 psi</c>, <c>1 1/4 in</c>, <c>0.62</c>, <c>2 000 L</c> (thin space), <c>−5 degC</c>.
/// Between number and unit a space may stand or not.
/// </summary>
public static class QuantityText
{
    /// <summary>Reads a value of the expected dimension.</summary>
    /// <param name="text">The value as written.</param>
    /// <param name="span">Where it stands, for messages.</param>
    /// <param name="expected">What it must measure.</param>
    /// <param name="found">Takes Q001…Q009.</param>
    /// <param name="quantity">SI value and the unit it was written in.</param>
    /// <param name="basis">For pressures: what it is measured from.</param>
    public static bool TryParse(
        string text, Span span, Dimension expected, DiagnosticList found, out Quantity quantity, PressureBasis basis = PressureBasis.Either)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(found);
        quantity = default;
        QuantityParts parts = QuantityParts.Read(text, span);
        return parts.TryUnit(expected, found, out Unit? unit)
            && parts.TryNumber(DimensionNames.WithExample(expected), found, out double value)
            && Fits(parts, unit, value, expected, basis, found, out quantity);
    }

    /// <summary>Reads a value of any dimension; without a unit it is a plain number.</summary>
    public static bool TryParseAny(string text, Span span, DiagnosticList found, out Quantity quantity)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(found);
        quantity = default;
        QuantityParts parts = QuantityParts.Read(text, span);
        return parts.TryUnit(null, found, out Unit? unit)
            && parts.TryNumber("a value such as `90 psi`", found, out double value)
            && Make(parts, unit ?? UnitTable.One, value, found, out quantity);
    }

    private static bool Fits(
        in QuantityParts parts, Unit? unit, double value, Dimension expected, PressureBasis basis, DiagnosticList found, out Quantity quantity)
    {
        quantity = default;
        if (unit is null)
        {
            if (expected != Dimension.One)
            {
                QuantityMessages.NoUnit(found, parts.Whole, parts.Text, expected);
                return false;
            }

            unit = UnitTable.One;
        }

        return HasDimension(parts, unit, expected, found) && HasBasis(parts, unit, basis, found) && Make(parts, unit, value, found, out quantity);
    }

    private static bool HasDimension(in QuantityParts parts, Unit unit, Dimension expected, DiagnosticList found)
    {
        if (unit.Dimension != expected)
        {
            QuantityMessages.OtherDimension(found, parts.Whole, parts.Text, unit.Dimension, expected);
        }

        return unit.Dimension == expected;
    }

    private static bool HasBasis(in QuantityParts parts, Unit unit, PressureBasis basis, DiagnosticList found)
    {
        if (unit.Dimension != Dimension.Pressure || basis == PressureBasis.Either)
        {
            return true;
        }

        if (basis == PressureBasis.Gauge && unit.IsAbsolute)
        {
            QuantityMessages.Absolute(found, parts.UnitSpan, unit.Symbol);
            return false;
        }

        if (basis == PressureBasis.Absolute && !unit.IsAbsolute && unit.Symbol != "Pa")
        {
            QuantityMessages.Gauge(found, parts.UnitSpan, unit.Symbol);
            return false;
        }

        return true;
    }

    private static bool Make(in QuantityParts parts, Unit unit, double value, DiagnosticList found, out Quantity quantity)
    {
        quantity = new(unit.ToSi(value), unit);
        if (double.IsFinite(quantity.Si))
        {
            return true;
        }

        QuantityMessages.TooLarge(found, parts.Whole, parts.Text);
        return false;
    }
}
