using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Tests.Sheets;
using Sightglass.Plant.Kinds;

namespace Sightglass.Book.Tests.Kinds;

public class KindSheetDefectsTests
{
    private static readonly KindSheet s_good = new() { Name = "valve", Purpose = "Opens." };

    [Fact]
    public void Of_SheetsOfTheTestsAndThePlant_IsEmpty() =>
        Assert.Empty(TestKinds.Catalog.Sheets.Concat(KindLibrary.Catalog.Sheets).SelectMany(KindSheetDefects.Of));

    [Theory]
    [InlineData("20 psi", null, null)]
    [InlineData(null, "zero", null)]
    [InlineData(null, null, "3")]
    public void Of_LimitsThatDoNotRead_SaysSo(string? usual, string? least, string? most) =>
        Assert.Single(With(new("size", ParameterType.Quantity, Dimension.Metre, "Size.", Default: usual, Minimum: least, Maximum: most)));

    [Fact]
    public void Of_TableWithoutColumns_SaysSo() => Assert.Single(With(new("curve", ParameterType.Table, Dimension.One, "Curve.")));

    [Fact]
    public void Of_ColumnOfUnknownDimension_SaysSo() => Assert.Single(With(new("curve", ParameterType.Table, Dimension.One, "Curve.", Choices: ["flow: flowing"])));

    [Fact]
    public void Of_DefaultThatIsNoChoice_SaysSo() => Assert.Single(With(new("shape", ParameterType.Choice, Dimension.One, "Shape.", Default: "round", Choices: ["square"])));

    [Fact]
    public void Of_WholeWithAUnit_SaysSo() => Assert.Single(With(new("size", ParameterType.Quantity, Dimension.Metre, "Size.", IsWhole: true)));

    [Fact]
    public void Of_KeyOfEveryItem_SaysSo() => Assert.Single(With(new("label", ParameterType.Text, Dimension.One, "Label.")));

    [Fact]
    public void Of_NameTwice_SaysSo() =>
        Assert.Single(KindSheetDefects.Of(s_good with { Positions = ["open", "open"] }));

    private static IReadOnlyList<string> With(KindParameter parameter) => KindSheetDefects.Of(s_good with { Parameters = [parameter] });
}
