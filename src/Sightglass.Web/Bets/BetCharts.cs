using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Plant.Plans;
using Sightglass.Training.Bets;

namespace Sightglass.Web.Bets;

/// <summary>
/// What a bet shows, as far as it has come: a chart for each unit, on scales that hold all that will come. Twice: for a wall, and for a page as narrow as a phone, which
/// shows the one that fits it.
/// </summary>
internal static class BetCharts
{
    private const double Wide = 760;
    private const double Narrow = 350;

    /// <summary>Pixels of all charts together.</summary>
    private const double High = 250;

    /// <summary>Pixels of each where it is narrow, beside the rows of its names.</summary>
    private const double HighNarrow = 190;
    private const double NameRow = 22;

    public static string Svg(BetFilm film, int frame)
    {
        IGrouping<string, (BoundShow Show, int Index)>[] units = [.. film.Bet.Shows.Select((s, i) => (s, i)).GroupBy(s => QuantityFormat.Symbol(s.s.Unit))];
        return $"<div class=\"wide\">{Each("bet", u => Chart(film, frame, u) with { Width = Wide, Height = High / units.Length })}</div>"
            + $"<div class=\"narrow\">{Each("slim", u => Chart(film, frame, u) with { Width = Narrow, Height = HighNarrow + (NameRow * u.Count()), NamesAbove = true })}</div>";

        string Each(string prefix, Func<IGrouping<string, (BoundShow Show, int Index)>, TimeChart> chart) =>
            string.Concat(units.Select((unit, n) => TimeChartDrawing.Render(chart(unit), SvgOptions.Inline with { IdPrefix = $"{prefix}{n}-" })));
    }

    private static TimeChart Chart(BetFilm film, int frame, IGrouping<string, (BoundShow Show, int Index)> unit)
    {
        IEnumerable<BetMoment> seen = film.Result.Moments.Take(frame + 1);
        return new()
        {
            Title = $"{string.Join(", ", unit.Select(s => QuantityWords.Of(s.Show.Name)))}, {unit.Key}",
            Unit = unit.Key,
            Series = [.. unit.Select(s => new Series(QuantityWords.Of(s.Show.Name), [.. seen.Select(m => (m.Seconds, m.Values[s.Index]))]))],
            Events = [.. BetStory.Of(film.Result.Journal).Select(s => s.First).Where(j => j.Time.Seconds <= film.Result.Moments[frame].Seconds).Select(j => new ChartEvent(j.Time.Seconds, j.Text))],
            Across = (0, film.Bet.Bet.RunsFor),
            Up = Ends([.. unit.SelectMany(s => film.Result.Moments.Select(m => m.Values[s.Index])).Where(double.IsFinite)]),
        };
    }

    private static (double From, double To) Ends(ImmutableArray<double> values)
    {
        (double low, double high) = (values.DefaultIfEmpty(0).Min(), values.DefaultIfEmpty(1).Max());
        double step = ChartTicks.RoundStep(Math.Max(high - Math.Min(low, 0), 1e-9), 5);
        return (low >= -1e-3 * high ? 0 : Math.Floor(low / step) * step, Math.Ceiling((high / step) - 1e-9) * step);
    }
}
