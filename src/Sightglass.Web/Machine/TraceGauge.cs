using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Diagram;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>
/// A trace gauge: the last quarter of an hour runs into its own scale. The trace is drawn on 300 × 62 and stretched to its room, the
/// scale is not.
/// </summary>
internal static class TraceGauge
{
    public const double Width = 300;
    public const double Height = 62;
    private const double Room = 5;
    private const double Seconds = 900;

    /// <summary>Everything that changes in gauge number <paramref name="index"/>.</summary>
    public static void Write(ImmutableDictionary<(string, string), string>.Builder values, int index, LiveGauge gauge, MachineSnapshot seen, bool truth)
    {
        GaugeLook look = seen.Gauges[index];
        string id = $"g{index}";
        bool shown = truth && look.Truth is not null;
        bool lies = shown && look.Reading is { } read && Math.Abs(read - look.Truth!.Value) > gauge.Misleading;
        values[(id, "class")] = lies ? "g lies" : gauge.Item is null ? "g hidden-truth" : "g";
        values[($"{id}-v", DiagramDelta.Text)] = look.Reading is { } r ? QuantityFormat.Number(r, gauge.Unit, gauge.Resolution) : "–";
        values[($"{id}-line", "d")] = look.Reading is null ? "" : Line(gauge, seen, index, g => g.Reading);
        values[($"{id}-notch", "transform")] = look.Reading is { } value ? $"translate(0 {N(Y(gauge, value))})" : "translate(0 -9999)";
        values[($"{id}-truth", "d")] = shown ? Line(gauge, seen, index, g => g.Truth) : "";
        values[($"{id}-diamond", "transform")] = shown ? $"translate(0 {N(Y(gauge, look.Truth!.Value))})" : "translate(0 -9999)";
        bool same = look.Reading is { } reading && !lies && shown && gauge.Item is not null && Math.Abs(reading - look.Truth!.Value) <= gauge.Resolution;
        values[($"{id}-said", DiagramDelta.Text)] = shown && !same ? $"truth {QuantityFormat.Text(look.Truth!.Value, gauge.Unit, gauge.Resolution)}" : "";
        values[($"{id}-by", DiagramDelta.Text)] = lies ? $"misleads by {Difference(gauge, look)}" : "";
    }

    /// <summary>Height of a value on the scale.</summary>
    public static double Y(LiveGauge gauge, double value) =>
        Math.Clamp(Room + ((Height - (2 * Room)) * (1 - ((value - gauge.Minimum) / (gauge.Maximum - gauge.Minimum)))), 2, Height - 2);

    public static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Difference(LiveGauge gauge, GaugeLook look)
    {
        double step = gauge.Resolution / gauge.Unit.Factor;
        double apart = Math.Abs(look.Reading!.Value - look.Truth!.Value) / gauge.Unit.Factor;
        return (Math.Round(apart / step) * step).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static string Line(LiveGauge gauge, MachineSnapshot seen, int index, Func<GaugeLook, double?> of)
    {
        double now = seen.Now.Seconds;
        StringBuilder path = new();
        foreach (TracePoint point in seen.Trace)
        {
            if (point.Seconds >= now - Seconds && of(point.Gauges[index]) is { } value)
            {
                Add(Width * (1 - ((now - point.Seconds) / Seconds)), value);
            }
        }

        if (of(seen.Gauges[index]) is { } last)
        {
            Add(Width, last);
        }

        return path.ToString();

        void Add(double x, double value) => path.Append(path.Length == 0 ? 'M' : 'L').Append(N(x)).Append(' ').Append(N(Y(gauge, value)));
    }
}
