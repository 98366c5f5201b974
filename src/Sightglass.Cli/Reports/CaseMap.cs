using System.Globalization;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Trials.Results;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Reports;

/// <summary>Every case as a mark over the two ranges that tell most: a point where it ended well, a cross where it failed.</summary>
internal static class CaseMap
{
    private const int Width = 520;
    private const int Height = 340;
    private const int Left = 64;
    private const int Bottom = 48;

    public static string Svg(TrialResult result, DrawnRange across, DrawnRange up)
    {
        StringBuilder svg = new();
        svg.Append(Inv($"<svg viewBox=\"0 0 {Width + Left + 12} {Height + Bottom + 12}\" role=\"img\" aria-label=\"Cases by {Html.Text(across.Name)} and {Html.Text(up.Name)}\">"));
        svg.Append(Inv($"<rect x=\"{Left}\" y=\"6\" width=\"{Width}\" height=\"{Height}\" class=\"d-out\"/>"));
        Ticks(svg, across, (x, text) => Inv($"<path class=\"d-line\" d=\"M{X(x)} {Height + 6}v6\"/><text class=\"d-lab\" x=\"{X(x)}\" y=\"{Height + 26}\" text-anchor=\"middle\">{text}</text>"));
        Ticks(svg, up, (y, text) => Inv($"<path class=\"d-line\" d=\"M{Left} {Y(y)}h-6\"/><text class=\"d-lab\" x=\"{Left - 10}\" y=\"{Y(y) + 4}\" text-anchor=\"end\">{text}</text>"));
        svg.Append(Inv($"<text class=\"d-lab\" x=\"{Left + (Width / 2)}\" y=\"{Height + 48}\" text-anchor=\"middle\">{Html.Text(Label(across))}</text>"));
        svg.Append(Inv($"<text class=\"d-lab\" transform=\"translate(14 {Height / 2}) rotate(-90)\" text-anchor=\"middle\">{Html.Text(Label(up))}</text>"));
        for (int pass = 0; pass < 2; pass++)
        {
            for (int i = 0; i < result.Outcomes.Length; i++)
            {
                CaseDraws draws = new(result.Seed, (ulong)(result.FirstCase + i));
                Mark(svg, result.Outcomes[i].Kind, pass == 1, X(Share(across, draws)), Y(Share(up, draws)));
            }
        }

        return svg.Append("</svg>").ToString();
    }

    private static void Mark(StringBuilder svg, OutcomeKind kind, bool failures, double x, double y)
    {
        switch (kind)
        {
            case OutcomeKind.Done when !failures:
                svg.Append(Inv($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"1\" class=\"d-ink\"/>"));
                break;
            case OutcomeKind.Stopped when !failures:
                svg.Append(Inv($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"3\" class=\"d-line\"/>"));
                break;
            case OutcomeKind.Failed or OutcomeKind.Undecided when failures:
                svg.Append(Inv($"<path d=\"M{x - 4:0.#} {y - 4:0.#}l8 8m0-8l-8 8\" class=\"bad-line\"/>"));
                break;
        }
    }

    /// <summary>Where a case lies in a range; words stand in equal strips, spread inside them by the draw itself.</summary>
    private static double Share(DrawnRange range, CaseDraws draws) => draws.Uniform(range.Order);

    private static double X(double share) => Left + (share * Width);

    private static double Y(double share) => 6 + ((1 - share) * Height);

    private static string Label(DrawnRange range) => range.Unit is { } unit && range.Words.IsEmpty ? $"{range.Name}, {unit.Symbol}" : range.Name;

    private static void Ticks(StringBuilder svg, DrawnRange range, Func<double, string, string> tick)
    {
        int count = range.Words.IsEmpty ? 5 : range.Words.Length;
        for (int i = 0; i < count; i++)
        {
            double share = range.Words.IsEmpty ? i / 4.0 : (i + 0.5) / count;
            string text = range.Words.IsEmpty
                ? Inv($"{(range.Unit ?? UnitTable.Find("1")!).FromSi(range.From + (share * (range.To - range.From))):0.##}")
                : Html.Text(range.Words[i]);
            svg.Append(tick(share, text));
        }
    }

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
