using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Draws a run: charts over bands, all on one scale of time.</summary>
public static class TimePlotDrawing
{
    private const double Margin = 24;
    private const double Head = 72;
    private const double Gap = 22;
    private const double BandPitch = 34;

    /// <summary>The plot as SVG.</summary>
    public static string Render(TimePlot plot, SvgOptions? svg = null)
    {
        svg ??= SvgOptions.Alone;
        double bands = plot.Bands.IsEmpty ? 0 : (plot.Bands.Length * BandPitch) + 30;
        double height = Head + plot.Charts.Sum(c => c.Height + Gap) + bands + Margin;
        SvgWriter w = SvgDocument.Begin(svg, "chart", 0, 0, plot.Width, height, plot.Title);
        w.Text("c-title", Margin, 34, plot.Title).Text("c-words", Margin, 56, plot.Lead);
        double inner = plot.Width - (2 * Margin);
        (double Left, double Right) margins = Margins(plot);
        double y = Head;
        for (int i = 0; i < plot.Charts.Length; i++)
        {
            TimeChart chart = plot.Charts[i] with { Width = inner, Across = plot.Across };
            w.Open("g", ("transform", $"translate({SvgNumber.Format(Margin)} {SvgNumber.Format(y)})"));
            TimeChartDrawing.Draw(w, chart, margins, $"{svg.IdPrefix}p{i + 1}-");
            w.Close().Break();
            y += chart.Height + Gap;
        }

        if (!plot.Bands.IsEmpty)
        {
            w.Open("g", ("transform", $"translate({SvgNumber.Format(Margin)} {SvgNumber.Format(y)})"));
            Bands(w, plot, new ChartScale(plot.Across.From, Math.Max(plot.Across.To, plot.Across.From + 1), 0, 1, margins.Left, inner - margins.Right, 0, plot.Bands.Length * BandPitch));
            w.Close();
        }

        return SvgDocument.End(w);
    }

    private static (double Left, double Right) Margins(TimePlot plot)
    {
        (double Left, double Right)[] all = [.. plot.Charts.Select(TimeChartDrawing.Margins)];
        double names = plot.Bands.Select(b => TextMeasure.Width(Name(b), TextFace.Sans600, 15) + 14).DefaultIfEmpty(0).Max();
        return (all.Select(m => m.Left).DefaultIfEmpty(12).Max(), Math.Min(all.Select(m => m.Right).Append(names).Max(), plot.Width * 0.4));
    }

    private static string Name(TimeBand band) => band.IsTruth ? Say.With($"truth {band.Name}") : band.Name;

    // A thin line with its words where they change; heavy while the named state lasts.
    private static void Bands(SvgWriter w, TimePlot plot, ChartScale scale)
    {
        for (int i = 0; i < plot.Bands.Length; i++)
        {
            TimeBand band = plot.Bands[i];
            double y = (i * BandPitch) + 22;
            double free = scale.Left;
            string truth = band.IsTruth ? " c-event-truth" : "";
            w.Path("c-grid", new SvgPath().Segment(scale.Left, y, scale.Right, y));
            for (int k = 0; k < band.Changes.Length; k++)
            {
                (double at, string words) = band.Changes[k];
                double from = scale.X(at);
                double to = k + 1 < band.Changes.Length ? scale.X(band.Changes[k + 1].X) : scale.Right;
                if (words == band.Heavy)
                {
                    w.Path("c-bar" + truth, new SvgPath().Segment(from, y, to, y));
                }

                w.Path("c-event" + truth, new SvgPath().Segment(from, y - 6, from, y + 6));
                if (from >= free)
                {
                    w.Text("c-lab", from + 5, y - 8, words);
                    free = from + 12 + TextMeasure.Width(words, TextFace.Sans400, 13);
                }
            }

            w.Text(band.IsTruth ? "c-end c-end-truth" : "c-end", scale.Right + 8, y + 5, TextMeasure.Fit(Name(band), TextFace.Sans600, 15, plot.Width * 0.4));
        }

        TimeChartDrawing.Axis(w, scale, plot.IsClock, plot.AcrossUnit);
    }
}
