using System.Collections.Immutable;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>One case as a line: what was really there, when the steps were done, when it went wrong.</summary>
/// <param name="Title">Said to people who cannot see it.</param>
/// <param name="Truth">Seconds and a share 0…1.</param>
/// <param name="Steps">Seconds and words such as <c>5 waits</c>.</param>
/// <param name="Failed">When it went wrong and in which words, or null.</param>
public sealed record CaseLine(string Title, ImmutableArray<(double X, double Y)> Truth, ImmutableArray<(double X, string Words)> Steps, (double X, string Words)? Failed)
{
    private const double Width = 430;

    /// <summary>The line as SVG, 430 × 66 px.</summary>
    public string Render(SvgOptions? svg = null)
    {
        double end = Truth.Select(p => p.X).Concat(Steps.Select(s => s.X)).Append(Failed?.X ?? 0).DefaultIfEmpty(1).Max();
        ChartScale scale = new(0, end > 0 ? end * 1.04 : 1, 0, 1, 4, Width - 4, 6, 36);
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "chart", 0, 0, Width, 66, Title);
        w.Path("c-line c-truth", ChartLine.Path(ChartLine.Thin(Truth.Select(p => (scale.X(p.X), scale.Y(p.Y))), Width)));
        w.Path("c-axis", new SvgPath().Segment(4, 44, Width - 4, 44));
        double free = 0;
        foreach ((double at, string words) in Steps.OrderBy(s => s.X))
        {
            double x = scale.X(at);
            double half = TextMeasure.Width(words, TextFace.Sans400, 13) / 2;
            double middle = Math.Clamp(x, half + 2, Width - half - 2);
            w.Path("c-step", new SvgPath().Segment(x, 44, x, 38));
            if (middle - half > free)
            {
                w.Text("c-lab", middle, 59, words, ("text-anchor", "middle"));
                free = middle + half + 6;
            }
        }

        if (Failed is { } failed)
        {
            double x = scale.X(failed.X);
            bool left = x > TextMeasure.Width(failed.Words, TextFace.Sans600, 13) + 10;
            w.Path("bad", new SvgPath().Polyline([(x - 6, 44), (x, 38), (x + 6, 44), (x, 50)]).Close()).Path("bad-asked", new SvgPath().Segment(x, 6, x, 38));
            w.Text("bad-words", x + (left ? -6 : 6), 15, failed.Words, ("text-anchor", left ? "end" : "start"));
        }

        return SvgDocument.End(w);
    }
}
