using System.Xml.Linq;
using CsCheck;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

public sealed class DiagramLayoutProperties
{
    [Fact]
    public void Of_AnyNetwork_IsDrawnWholeWithoutOverlap() =>
        Networks.Any.Sample(
            n =>
            {
                string? fault = DiagramGeometry.Fault(DiagramLayout.Of(n));
                Assert.True(fault is null, $"{fault}\n{Networks.Words(n)}");
            },
            iter: 300);

    [Fact]
    public void Render_AnyNetwork_IsWellFormedAndHasNoIdTwice() => Networks.Any.Sample(
        n =>
        {
            XDocument document = XDocument.Parse(DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still));
            string[] ids = [.. document.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>()];
            Assert.Equal(ids.Distinct().Count(), ids.Length);
        },
        iter: 100);

    [Fact]
    public void Of_AnyNetwork_TheSameTwice() => Networks.Any.Sample(
        n => Assert.Equal(DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still), DiagramDrawing.Render(DiagramLayout.Of(n), DiagramState.Still)), iter: 30);
}
