using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Drawing.Charts;
using Sightglass.Drawing.Svg;
using Sightglass.Web.Live;
using Sightglass.World.Journal;

namespace Sightglass.Web.Machine;

/// <summary>What a session's gauges have shown, as charts.</summary>
internal static class LiveChart
{
    private const double TrendWidth = 480;
    private const double AlongWidth = 1200;

    /// <summary>Less air in a line of liquid is bubbles that everything bears.</summary>
    private const double AirThatIsTold = 0.1;

    private const int AlongCurves = 6;

    /// <summary>A gauge with its last quarter of an hour.</summary>
    public static string Gauge(LiveGauge gauge, MachineSnapshot seen, bool truth)
    {
        double step = gauge.Resolution / gauge.Unit.Factor;
        TraceGauge drawn = new()
        {
            Title = gauge.Label,
            Reading = Points(gauge, seen, g => g.Reading),
            Truth = truth ? Points(gauge, seen, g => g.Truth) : [],
            From = gauge.Unit.FromSi(gauge.Minimum),
            To = gauge.Unit.FromSi(gauge.Maximum),
            Normal = gauge.NormalFrom is { } from && gauge.NormalTo is { } to ? (gauge.Unit.FromSi(from), gauge.Unit.FromSi(to)) : null,
            Unit = QuantityFormat.Symbol(gauge.Unit),
            Decimals = ChartNumber.DecimalsFor(step),
            Step = step,
            TruthNote = truth && gauge.Number < seen.Gauges.Length && seen.Gauges[gauge.Number].Air is >= AirThatIsTold and var air ? Say.With($"truth: {100 * air:0}\u00A0% air") : "",
            Misleading = gauge.Item is null ? null : gauge.Misleading / gauge.Unit.Factor,
        };
        return TraceGaugeDrawing.Render(drawn, SvgOptions.Inline with { IdPrefix = $"g{gauge.Number}-" });
    }

    /// <summary>The last half hour of a gauge, truth beside it, what happened below.</summary>
    public static string Trend(LiveGauge? gauge, MachineSnapshot seen, bool truth)
    {
        if (gauge is null || seen.Gauges.IsEmpty)
        {
            return "";
        }

        double from = Math.Max(0, seen.Now.Seconds - Sampler.TraceSeconds);
        string Text(double value, double resolution) => QuantityFormat.Text(gauge.Unit.ToSi(value), gauge.Unit, resolution);
        // The truth has no steps of five: it is told to the decimal in which the gauge is read.
        double fine = Math.Pow(10, Math.Floor(Math.Log10(gauge.Resolution / gauge.Unit.Factor) + 1e-9)) * gauge.Unit.Factor;
        ImmutableArray<(double X, double Y)> reading = Points(gauge, seen, g => g.Reading);
        ImmutableArray<(double X, double Y)> real = truth ? Points(gauge, seen, g => g.Truth) : [];
        TimeChart chart = new()
        {
            Title = Say.With($"{gauge.Label} over the last thirty minutes"),
            Series =
            [
                new(Say.It("shows"), reading) { End = reading.IsEmpty ? null : Say.With($"shows {Text(reading[^1].Y, gauge.Resolution)}") },
                new(Say.It("truth"), real, true) { End = real.IsEmpty ? null : Say.With($"truth {Text(real[^1].Y, fine)}") },
            ],
            Events = [.. seen.Journal.Select(j => new ChartEvent(j.Time.Seconds, j.Text, j.Kind == JournalKind.Truth))],
            Across = (from, from + Sampler.TraceSeconds),
            Up = Stretch(gauge, [.. reading.Concat(real).Select(p => p.Y)]),
            Width = TrendWidth,
            Height = 156,
            Truth = truth,
        };
        return TimeChartDrawing.Render(chart, SvgOptions.Inline with { IdPrefix = "trend-" });
    }

    /// <summary>Pressure along the train at a few moments of what is remembered, over the train itself. Hidden truth.</summary>
    public static string Along(AlongTrain line, ImmutableArray<AlongPoint> seen, ImmutableArray<Vehicle> vehicles, Unit unit)
    {
        double head = vehicles.Min(v => v.From);
        TrainPressure drawn = new()
        {
            Title = Say.With($"{line.Name} along the train"),
            ShowsTitle = false,
            UntilNow = true,
            Unit = QuantityFormat.Symbol(unit),
            Positions = [.. line.Points.Select(p => p.X)],
            Moments = [.. seen.Select(m => (m.Seconds, m.Pressures.Select(unit.FromSi).ToImmutableArray()))],
            Vehicles = [.. vehicles.OrderBy(v => v.From).Select(v => new Drawing.Charts.TrainVehicle(MachineChoice.WordsOf(v), v.From - head, v.To - head, Book.Model.TrainVehicle.IsMachineClass(v.Class)))],
            Curves = AlongCurves,
            Width = AlongWidth,
            Height = 190,
        };
        return TrainPressureDrawing.Render(drawn, SvgOptions.Inline with { IdPrefix = "along-" });
    }

    private static ImmutableArray<(double X, double Y)> Points(LiveGauge gauge, MachineSnapshot seen, Func<GaugeLook, double?> of) =>
    [
        .. seen.Trace.Append(new(seen.Now.Seconds, seen.Gauges)).Where(p => p.Gauges.Length > gauge.Number && of(p.Gauges[gauge.Number]) is not null)
            .Select(p => (p.Seconds, gauge.Unit.FromSi(of(p.Gauges[gauge.Number])!.Value))),
    ];

    // A part of the scale in its tenths with room above and below, so that a steady gauge looks steady.
    private static (double From, double To) Stretch(LiveGauge gauge, ImmutableArray<double> values)
    {
        double minimum = gauge.Unit.FromSi(gauge.Minimum);
        double step = (gauge.Unit.FromSi(gauge.Maximum) - minimum) / 10;
        if (values.IsEmpty)
        {
            return (minimum, minimum + (10 * step));
        }

        double low = Math.Floor(((values.Min() - minimum) / step) - 0.3);
        double high = Math.Ceiling(((values.Max() - minimum) / step) + 0.3);
        low = values.Min() >= minimum ? Math.Max(low, 0) : low; // no scale goes below its least where nothing does
        while (high - low < 4)
        {
            (low, high) = low > 0 ? (low - 1, high) : (low, high + 1);
        }

        return (minimum + (low * step), minimum + (high * step));
    }
}
