using System.Globalization;
using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Quantities;

public sealed class QuantityProperties
{
    private static readonly Gen<Unit> s_unit = Gen.Int[0, UnitTable.Units.Count - 1].Select(i => UnitTable.Units[i]);

    [Fact]
    public void TryParse_WrittenQuantity_ComesBack() => Gen.Select(Gen.Double[-1e9, 1e9], s_unit).Holds((value, unit) =>
    {
        DiagnosticList found = [];
        string text = string.Create(CultureInfo.InvariantCulture, $"{value:R} {(unit == UnitTable.One ? "" : unit.Symbol)}");
        Assert.True(QuantityText.TryParse(text, Span.None, unit.Dimension, found, out Quantity q));
        Assert.Equal((unit.ToSi(value), unit), (q.Si, q.Unit));
    });

    [Fact]
    public void TryParse_ShownQuantity_ComesBackWithinItsResolution() => Gen.Select(Gen.Double[-1e5, 1e5], s_unit, Gen.OneOf(0.01, 0.5, 1, 5)).Holds(
        (value, unit, step) =>
        {
            double resolution = step * unit.Factor;
            string shown = QuantityFormat.Text(unit.ToSi(value), unit, resolution);
            Assert.True(QuantityText.TryParse(shown, Span.None, unit.Dimension, [], out Quantity q), shown);
            Assert.InRange(Math.Abs(q.Value - value), 0, step * 0.51);
        });

    [Fact]
    public void TryParse_Garbage_NeverThrowsAndAlwaysSaysWhy() => Gen.Select(Gen.String, s_unit).Holds(
        (text, unit) =>
        {
            DiagnosticList found = [];
            Assert.Equal(QuantityText.TryParse(text, Span.None, unit.Dimension, found, out _), found.Count == 0);
            found = [];
            Assert.Equal(QuantityRangeText.TryParse(text, Span.None, unit.Dimension, found, out _), found.Count == 0);
            found = [];
            Assert.Equal(QuantityText.TryParseAny(text, Span.None, found, out _), found.Count == 0);
        },
        iter: 5_000);

    [Fact]
    public void TryParse_RubbleOfNumbers_NeverThrowsAndAlwaysSaysWhy() =>
        Gen.OneOf("1", "1/4", "..", "-", "¼", "\u2009", "000", "e", ".", ",", " ", "psi", "in", "/", "%", "9e307", "\u202F123").Array[0, 8].Holds(
            words =>
            {
                DiagnosticList found = [];
                string text = string.Concat(words);
                bool reads = QuantityText.TryParseAny(text, Span.None, found, out Quantity q);
                Assert.Equal(reads, found.Count == 0);
                Assert.True(double.IsFinite(q.Unit is null ? 0 : q.Si) || !reads);
            },
            iter: 20_000);
}
