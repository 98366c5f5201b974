using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Network.Laws.Motion;
using Sightglass.Plant.Calculators.Running;
using Sightglass.World.Hauls;

namespace Sightglass.Paper.Papers;

/// <summary>The pictures of a run: height, speed and fuel along the route, and forces over speed.</summary>
public static class HaulPicture
{
    private const double Narrow = 352;

    /// <summary>Points of a curve over speed.</summary>
    private const int Curve = 80;

    /// <summary>Everything along the route in one picture, in the language that is spoken.</summary>
    /// <param name="run">What was worked out.</param>
    /// <param name="svg">How it is written.</param>
    /// <param name="width">Pixels.</param>
    public static string Along(HaulResult run, SvgOptions svg, double width = 1000)
    {
        ArgumentNullException.ThrowIfNull(run);
        Route route = run.Request.Route;
        Unit way = HaulUnits.Of(run.Train.Plan.Book).Way;
        return TimePlotDrawing.Render(
            new()
            {
                Title = Say.Begin(Say.Book(route.Name)),
                Lead = run.Request.Train is { } train ? Say.Begin(Say.Book(train)) : Say.It("The machine alone"),
                Width = width,
                IsClock = false,
                AcrossUnit = QuantityFormat.Symbol(way),
                Across = (way.FromSi(route.From), way.FromSi(route.To)),
                Charts = Charts(run),
                Bands = [new("", [.. route.Places.Select(p => (way.FromSi(p.At), Say.Book(p.Name)))])],
            },
            svg);
    }

    /// <summary>The same charts one by one, as wide as a phone.</summary>
    public static ImmutableArray<string> Each(HaulResult run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return [.. Charts(run).Select((c, i) => TimeChartDrawing.Render(c with { Width = Narrow, NamesAbove = true, Height = c.Height + 40 }, SvgOptions.Inline with { IdPrefix = $"haul{i}-" }))];
    }

    /// <summary>What pulls, what resists, and what the dynamic brake gives, over speed.</summary>
    public static string Forces(HaulResult run, SvgOptions svg, bool narrow = false)
    {
        ArgumentNullException.ThrowIfNull(run);
        HaulUnits units = HaulUnits.Of(run.Train.Plan.Book);
        RouteTrain train = run.Running;
        double fastest = run.Stretches.Max(s => s.Limit) * 1.1;
        double adhesion = run.Request.Sands ? run.Ruling.Sanded : run.Ruling.Adhesion;
        double climb = run.Ruling.Share * run.Train.Weight;
        Series Of(string name, Func<double, double> newtons) =>
            new(name, [.. Enumerable.Range(0, Curve + 1).Select(i => fastest * i / Curve).Select(v => (units.Speed.FromSi(v), newtons(v) / 1000))]) { End = name };
        ImmutableArray<Series> all =
        [
            Of(Say.It("pulls at most"), v => Math.Min(train.Most, TractiveEffort.Newtons(train.Power, 1, train.DrivenWeight, adhesion, Math.Max(v, 1e-3)))),
            Of(Say.It("resists on the ruling grade"), v => SpeedResistance.Newtons(train.Resistance.AsSpan(), v) + climb),
            Of(Say.It("resists on the level"), v => SpeedResistance.Newtons(train.Resistance.AsSpan(), v)),
            Of(Say.It("dynamic brake, not counted"), run.Train.DynamicNewtons),
        ];
        return TimeChartDrawing.Render(
            new()
            {
                Title = Say.It("Forces at the rail in kilonewtons over speed"),
                Series = [.. all.Where(s => s.Points.Any(p => p.Y > 0))],
                IsClock = false,
                AcrossUnit = QuantityFormat.Symbol(units.Speed),
                Unit = "kN",
                Width = narrow ? Narrow : 640,
                Height = narrow ? 320 : 280,
                NamesAbove = narrow,
            },
            svg with { IdPrefix = svg.IdPrefix + "forces-" });
    }

    private static ImmutableArray<TimeChart> Charts(HaulResult run)
    {
        HaulUnits units = HaulUnits.Of(run.Train.Plan.Book);
        Route route = run.Request.Route;
        double At(double metres) => units.Way.FromSi(route.From + metres);
        TimeChart Of(string title, Unit unit, double height, params ImmutableArray<Series> series) =>
            new() { Title = title, Series = series, Unit = QuantityFormat.Symbol(unit), IsClock = false, AcrossUnit = QuantityFormat.Symbol(units.Way), Across = (At(0), At(route.Length)), Height = height };
        ImmutableArray<RoutePoint> points = Thin(run.Points);
        var charts = ImmutableArray.CreateBuilder<TimeChart>();
        charts.Add(Of(Say.It("Height over the start"), units.Short, 120, new Series(Say.It("height"), Heights(run.Stretches, At, units.Short))));
        charts.Add(Of(Say.It("Speed"), units.Speed, 190, new(Say.It("limit"), Limits(run.Stretches, At, units.Speed)), new(Say.It("speed"), [.. points.Select(p => (At(p.Metres), units.Speed.FromSi(p.Speed)))])));
        foreach (UnitFuel unit in run.Fuel)
        {
            charts.Add(Of(
                Say.With($"Fuel of machine {unit.Unit}"), units.Volume, 190,
                [.. unit.Compartments.Select(c => new Series(Name(c.Item), [.. unit.Seconds.Select((s, i) => (At(run.MetresAt(s)), units.Volume.FromSi(c.Volumes[i])))]))]));
        }

        return charts.ToImmutable();
    }

    private static string Name(Item item) => Say.Book(item.Label.Length > 0 ? item.Label : item.Name);

    private static ImmutableArray<RoutePoint> Thin(ImmutableArray<RoutePoint> points)
    {
        int each = Math.Max(1, points.Length / 4000);
        return [.. points.Where((p, i) => i % each == 0 || p.Speed == 0 || i == points.Length - 1)];
    }

    private static ImmutableArray<(double X, double Y)> Heights(ImmutableArray<RouteStretch> stretches, Func<double, double> at, Unit unit)
    {
        List<(double, double)> heights = [(at(0), 0)];
        (double x, double z) = (0, 0);
        foreach (RouteStretch s in stretches)
        {
            (x, z) = (x + s.Length, z + (s.Length * TrackResistance.GradeShare(s.Grade)));
            heights.Add((at(x), unit.FromSi(z)));
        }

        return [.. heights];
    }

    private static ImmutableArray<(double X, double Y)> Limits(ImmutableArray<RouteStretch> stretches, Func<double, double> at, Unit unit)
    {
        List<(double, double)> limits = [];
        double x = 0;
        foreach (RouteStretch s in stretches)
        {
            limits.Add((at(x), unit.FromSi(s.Limit)));
            x += s.Length;
            limits.Add((at(x), unit.FromSi(s.Limit)));
        }

        return [.. limits];
    }
}
