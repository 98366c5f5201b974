using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>Picks what stands at the side of a machine's diagram.</summary>
internal static class GaugeChoice
{
    private const int Most = 4;

    public static ImmutableArray<LiveGauge> Of(Plan plan)
    {
        ClassBook book = plan.Book;
        Item[] tanks = [.. book.Items.Values.Where(i => i.Kind.Role == KindRole.Store && plan.FindSignal($"fill of {i.Name}") is not null)];
        IEnumerable<Item> gauges = book.ItemsInOrder.Where(i => i.Reading is not null && i.Kind.Symbol == "gauge" && plan.Items[i.Name].Shown is not null);
        List<LiveGauge> chosen = [.. gauges.Take(Most).Select(g => Gauge(plan, g, tanks))];
        if (chosen.Count == 0)
        {
            chosen.AddRange(book.Items.Values.Where(i => i.Reading is not null && plan.Items[i.Name].Shown is not null).Take(Most).Select(g => Gauge(plan, g, tanks)));
        }

        if (Ground(plan, tanks) is { } ground)
        {
            chosen.Add(ground);
        }

        return [.. chosen];
    }

    private static LiveGauge Gauge(Plan plan, Item item, Item[] tanks)
    {
        Reading reading = item.Reading!;
        Signal[] volumes = [.. tanks.Select(t => plan.FindSignal($"volume of {t.Name}")!)];
        bool ofTheWhole = reading.Unit.Dimension == Dimension.One && reading.Formula?.Contains("volume of", StringComparison.Ordinal) == true;
        double capacity = tanks.Sum(t => Capacity(plan, t));
        return new(
            item.Name, item.Label.Length > 0 ? item.Label : Words.Capital(item.Name), string.Join(", ", item.Places.Take(1)), reading.Unit, reading.Minimum, reading.Maximum,
            reading.Resolution, item, ofTheWhole && capacity > 0 ? volumes : [plan.Items[item.Name].Shown!], ofTheWhole && capacity > 0 ? capacity : 1);
    }

    private static LiveGauge? Ground(Plan plan, Item[] tanks)
    {
        Signal[] spilled = [.. tanks.Select(t => plan.FindSignal($"spilled of {t.Name}")).OfType<Signal>()];
        if (spilled.Length == 0)
        {
            return null;
        }

        Unit unit = plan.Book.ShownIn.GetValueOrDefault(Dimension.Volume) ?? UnitTable.Get("L");
        double capacity = tanks.Sum(t => Capacity(plan, t));
        return new("on the ground", "On the ground", "nobody can read this", unit, 0, Round(unit, capacity / 3), unit.Factor, null, spilled, 1);
    }

    /// <summary>A round number of the unit near a volume.</summary>
    private static double Round(Unit unit, double volume)
    {
        double shown = Math.Max(unit.FromSi(volume), 1);
        double power = Math.Pow(10, Math.Floor(Math.Log10(shown)));
        return unit.ToSi(Math.Ceiling(shown / power) * power);
    }

    /// <summary>Volume of a tank below its roof, from the rule by which situations fill it; density cancels.</summary>
    private static double Capacity(Plan plan, Item tank) =>
        plan.Starts.TryGetValue($"fill of {tank.Name}", out StartRule? rule) && rule.ToAmount is { } amount && tank.Parameters.TryGetValue("density", out ParameterValue? density) && density.Number > 0
            ? amount(1) / density.Number
            : 0;
}
