using System.Xml.Linq;
using CsCheck;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

public sealed class DiagramLayoutProperties
{
    [Fact]
    public void Of_AnyNetwork_IsDrawnWholeWithoutOverlap() =>
        Networks.Any.Holds(n => Assert.Null(DiagramGeometry.Fault(DiagramLayout.Of(n))), iter: 300, print: Networks.Words);

    [Fact]
    public void Render_AnyNetwork_IsWellFormedAndHasNoIdTwice() => Networks.Any.Holds(
        n =>
        {
            XDocument document = XDocument.Parse(DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still));
            string[] ids = [.. document.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>()];
            Assert.Equal(ids.Distinct().Count(), ids.Length);
        },
        iter: 100);

    [Fact]
    public void Of_AnyNetwork_TheSameTwice() => Networks.Any.Holds(
        n => Assert.Equal(DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still), DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still)), iter: 30);
}
