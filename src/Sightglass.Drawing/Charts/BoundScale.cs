using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>A share with its lower bound and what was asked for, in per cent.</summary>
/// <param name="Share">Share that ended well, 0…100.</param>
/// <param name="Bound">What is at least so, 0…100.</param>
/// <param name="Asked">What was asked for, or null.</param>
public sealed record BoundScale(double Share, double Bound, double? Asked = null)
{
    /// <summary>The scale as SVG, 300 × 74 px.</summary>
    public string Render(SvgOptions? svg = null)
    {
        double from = Start();
        ChartScale scale = new(from, 100, 0, 1, 20, 276, 0, 44);
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "chart", 0, 0, 300, 74, Say.With($"Share that ended well {ChartNumber.Text(Share, 1)} per cent, at least {ChartNumber.Text(Math.Floor(Bound * 10) / 10, 1)} per cent"));
        w.Path("c-axis", new SvgPath().Segment(scale.Left, 44, scale.Right, 44));
        for (int i = 0; i <= 4; i++)
        {
            double value = from + ((100 - from) * i / 4);
            w.Path("c-axis", new SvgPath().Segment(scale.X(value), 44, scale.X(value), 50)).Text("c-lab", scale.X(value), 66, ChartNumber.Text(value, ChartNumber.DecimalsFor(value)) + (i == 4 ? "\u202F%" : ""), ("text-anchor", "middle"));
        }

        if (Asked is { } asked && asked >= from)
        {
            string words = Say.It("asked for");
            bool left = scale.X(asked) - TextMeasure.Width(words, TextFace.Sans400, 13) > 8;
            w.Path("c-asked", new SvgPath().Segment(scale.X(asked), 44, scale.X(asked), 12)).Text("c-lab", scale.X(asked) + (left ? -5 : 5), 20, words, ("text-anchor", left ? "end" : "start"));
        }

        if (Asked is null)
        {
            w.Text("c-lab", scale.Left, 16, Say.It("ended well or safely"));
        }

        w.Path("c-bar", new SvgPath().Segment(scale.X(Math.Max(Bound, from)), 36, scale.X(100), 36)).Path("c-axis", new SvgPath().Segment(scale.X(Math.Max(Bound, from)), 29, scale.X(Math.Max(Bound, from)), 43));
        w.Element("circle", ("class", "c-share"), ("cx", scale.X(Math.Max(Share, from))), ("cy", 36), ("r", 5));
        return SvgDocument.End(w);
    }

    // The longest stretch up to 100 that still shows the bound: 98, 96, 92, 90, 80, 60, 0.
    private double Start()
    {
        double lowest = Math.Min(Bound, Asked ?? 100);
        return new double[] { 98, 96, 92, 90, 80, 60, 20, 0 }.FirstOrDefault(s => s <= lowest - ((100 - s) * 0.02));
    }
}
