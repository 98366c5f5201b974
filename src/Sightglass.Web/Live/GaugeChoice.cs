using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Web.Live;

/// <summary>Picks what stands at the side of a machine's diagram.</summary>
internal static class GaugeChoice
{
    private const int Most = 6;

    /// <summary>Of every living system and every vehicle, numbered.</summary>
    public static ImmutableArray<LiveGauge> Of(Plan plan)
    {
        string?[] systems = [.. LivingSystems.Of(plan.Book).DefaultIfEmpty(null!)];
        IEnumerable<LiveGauge> all = from items in plan.Book.ItemsInOrder.GroupBy(i => i.Vehicle.Index)
                                     let known = items.ToArray()
                                     let read = known.Where(i => i.Reading is not null && plan.Items[i.Name].Shown is not null).ToLookup(i => SystemOf(known, i))
                                     from system in systems
                                     from gauge in Of(plan, [.. known.Where(i => system is null || i.System == system)], system is null ? [.. read.SelectMany(r => r)] : [.. read[system]])
                                     select gauge with { System = system, Vehicle = items.Key };
        return [.. all.Select((g, i) => g with { Number = i })];
    }

    private static List<LiveGauge> Of(Plan plan, Item[] items, Item[] read)
    {
        Item[] tanks = [.. items.Where(i => i.Kind.Role == KindRole.Store && plan.FindSignal($"fill of {i.Name}") is not null)];
        // What nothing is stored in and nothing goes through has no picture beside which they would have to fit.
        int most = items.Any(i => i.Kind.Role is KindRole.Store or KindRole.Path) ? Most : int.MaxValue;
        List<LiveGauge> chosen = [.. read.Where(i => i.Kind.Symbol == "gauge").Take(most).Select(g => Gauge(plan, g, tanks))];
        if (chosen.Count == 0)
        {
            chosen.AddRange(read.Take(most).Select(g => Gauge(plan, g, tanks)));
        }

        if (Ground(plan, tanks) is { } ground)
        {
            chosen.Add(ground);
        }

        return chosen;
    }

    // The system of what it shows, wherever it hangs: formulas speak in the names of their own vehicle.
    private static string? SystemOf(Item[] vehicle, Item gauge)
    {
        string formula = gauge.Reading!.Formula ?? "";
        string suffix = gauge.Vehicle.IsTheMachine ? "" : gauge.Vehicle.NameOf("");
        IEnumerable<Item> shown = vehicle.Where(i => i.System is not null && i.Kind.Role != KindRole.Described
            && formula.Contains(suffix.Length > 0 ? i.Name.Replace(suffix, "", StringComparison.Ordinal) : i.Name, StringComparison.Ordinal));
        return shown.MaxBy(i => i.Name.Length)?.System ?? gauge.System;
    }

    private static LiveGauge Gauge(Plan plan, Item item, Item[] tanks)
    {
        Reading reading = item.Reading!;
        Signal[] volumes = [.. tanks.Select(t => plan.FindSignal($"volume of {t.Name}")!)];
        bool ofTheWhole = reading.Unit.Dimension == Dimension.One && reading.Formula?.Contains("volume of", StringComparison.Ordinal) == true;
        double capacity = tanks.Sum(t => Capacity(plan, t));
        return new(
            item.Name, item.Label.Length > 0 ? item.Label : Say.Begin(item.Name), string.Join(", ", item.Places.Take(1)), reading.Unit, reading.Minimum, reading.Maximum,
            reading.Resolution, item, ofTheWhole && capacity > 0 ? volumes : [plan.Items[item.Name].Shown!], ofTheWhole && capacity > 0 ? capacity : 1)
        {
            Air = plan.Book.ItemsInOrder.FirstOrDefault(i => reading.Formula == $"pressure of {i.Name}" && i.Kind.Quantities.Any(q => q is { Name: "air" } && q.Dimension == Dimension.One)) is { } line ? plan.FindSignal($"air of {line.Name}") : null,
        };
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
        return new("on the ground", null, null, unit, 0, Round(unit, capacity / 3), unit.Factor, null, spilled, 1);
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
