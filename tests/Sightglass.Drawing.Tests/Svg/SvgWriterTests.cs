using System.Xml.Linq;
using CsCheck;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Tests.Svg;

public sealed class SvgWriterTests
{
    [Fact]
    public void Text_AnyCharacters_ComesBackFromXml() => Gen.String[Gen.Char[' ', '\uD7FF'], 0, 40].Holds(text =>
    {
        string svg = new SvgWriter().Open("g", ("aria-label", text)).Text("d-lab", 1, 2, text).Close().ToString();
        XElement group = XElement.Parse(svg, LoadOptions.PreserveWhitespace);
        Assert.Equal(text, group.Element("text")!.Value);
        Assert.Equal(text, (string?)group.Attribute("aria-label"));
    });

    [Fact]
    public void ToString_AnOpenElement_IsRefused() => Assert.Throws<InvalidOperationException>(() => new SvgWriter().Open("g").ToString());

    [Theory]
    [InlineData(-0.001, "0")]
    [InlineData(1.006, "1.01")]
    [InlineData(12.5, "12.5")]
    [InlineData(-3, "-3")]
    public void Format_ANumber_IsShort(double value, string text) => Assert.Equal(text, SvgNumber.Format(value));

    [Fact]
    public void Format_NotANumber_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => SvgNumber.Format(double.NaN));
}
