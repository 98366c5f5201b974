using System.Xml.Linq;
using Sightglass.Drawing.Ladder;
using Sightglass.Drawing.Text;
using Sightglass.Tests.Support;

namespace Sightglass.Drawing.Tests.Ladder;

public sealed class LadderLayoutProperties
{
    [Fact]
    public void Of_AnyCircuit_EveryPartOnceBetweenBarsOfItsWires() => Circuits.Any.Holds(
        input =>
        {
            LadderLayout layout = LadderLayout.Of(input);
            Assert.Equal(input.Parts.Select(p => p.Id).Order(StringComparer.Ordinal), layout.Rungs.Select(r => r.Part.Id).Order(StringComparer.Ordinal));
            foreach (LadderRung rung in layout.Rungs)
            {
                Assert.True(rung.Top < rung.Bottom, "from above to below");
                (string upper, string lower) = rung.IsTurned ? (rung.Part.Minus, rung.Part.Plus) : (rung.Part.Plus, rung.Part.Minus);
                Assert.Contains(layout.Bars, b => b.Wire.Id == upper && b.Y == rung.Top && b.Left <= rung.X && rung.X <= b.Right);
                Assert.Contains(layout.Bars, b => b.Wire.Id == lower && b.Y == rung.Bottom && b.Left <= rung.X && rung.X <= b.Right);
            }
        },
        iter: 300);

    /// <summary>No two parts share a stretch of line, no symbol and no word lies on another.</summary>
    [Fact]
    public void Of_AnyCircuit_NothingOverlaps() => Circuits.Any.Holds(
        input =>
        {
            LadderOptions options = new();
            LadderLayout layout = LadderLayout.Of(input, options);
            LadderRung[] rungs = [.. layout.Rungs];
            for (int i = 0; i < rungs.Length; i++)
            {
                double right = rungs[i].X + 24 + rungs[i].Words.Max(w => TextMeasure.Width(w, TextFace.Sans500, options.LabelSize * 0.92));
                for (int j = 0; j < rungs.Length; j++)
                {
                    if (i != j && rungs[i].X == rungs[j].X)
                    {
                        Assert.True(rungs[i].Bottom <= rungs[j].Top || rungs[j].Bottom <= rungs[i].Top, $"{rungs[i].Part.Id} and {rungs[j].Part.Id} share a line");
                    }
                    else if (i != j && rungs[j].X > rungs[i].X && Math.Abs(rungs[i].Y - rungs[j].Y) < 20)
                    {
                        Assert.True(right <= rungs[j].X - 15, $"the words of {rungs[i].Part.Id} reach {rungs[j].Part.Id}");
                    }
                }

                Assert.True(right <= layout.Sheet.Right, $"the words of {rungs[i].Part.Id} leave the sheet");
            }
        },
        iter: 300);

    [Fact]
    public void Render_AnyCircuit_IsWellFormedWithEveryIdOnce() => Circuits.Any.Holds(
        input =>
        {
            XDocument svg = XDocument.Parse(LadderDrawing.Render(LadderLayout.Of(input), LadderState.Still));
            string[] ids = [.. svg.Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>()];
            Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        },
        iter: 100);
}
