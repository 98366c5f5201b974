using System.Collections.Immutable;
using Sightglass.Drawing.Diagram;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>All that changes by itself on the machine's page at one moment, and what has to be sent when it has changed.</summary>
public sealed class MachineView
{
    private readonly DiagramValues _diagram;
    private readonly ImmutableDictionary<(string Id, string Attribute), string> _rest;

    private MachineView(DiagramValues diagram, ImmutableDictionary<(string Id, string Attribute), string> rest) => (_diagram, _rest) = (diagram, rest);

    /// <summary>Value of an attribute (<c>#text</c>, <c>#html</c>) outside of the diagram.</summary>
    public string this[string id, string attribute] => _rest[(id, attribute)];

    /// <param name="drawing">What is drawn.</param>
    /// <param name="gauges">Those beside it.</param>
    /// <param name="trend">That of them whose last half hour is drawn.</param>
    /// <param name="along">Draws the pressure along the train, or null where there is none.</param>
    /// <param name="loads">What wheels carry, or null where there are none.</param>
    /// <param name="seen">What is seen.</param>
    /// <param name="truth">Whether hidden truth is shown.</param>
    internal static MachineView Of(MachineDrawing drawing, ImmutableArray<LiveGauge> gauges, LiveGauge? trend, Func<MachineSnapshot, string>? along, LoadFigure? loads, MachineSnapshot seen, bool truth)
    {
        ImmutableDictionary<(string, string), string>.Builder rest = ImmutableDictionary.CreateBuilder<(string, string), string>();
        rest[("clock", DiagramDelta.Text)] = Words.Clock(seen.Now.Seconds);
        foreach (LiveGauge gauge in gauges.Where(g => g.Number < seen.Gauges.Length))
        {
            rest[($"g{gauge.Number}", "#html")] = LiveChart.Gauge(gauge, seen, truth);
        }

        rest[("trend", "#html")] = LiveChart.Trend(trend, seen, truth);
        rest[("along", "#html")] = truth && along is not null ? along(seen) : "";
        rest[("loads", "#html")] = loads?.Html(seen, truth) ?? "";
        return new(drawing.Values(seen, truth), rest.ToImmutable());
    }

    /// <summary>Flat: id, attribute, value.</summary>
    public static string[] Changes(MachineView before, MachineView after) =>
    [
        .. DiagramValues.Between(before._diagram, after._diagram).SelectMany(d => new[] { d.Id, d.Attribute, d.Value }),
        .. after._rest.Where(r => !before._rest.TryGetValue(r.Key, out string? old) || old != r.Value)
            .OrderBy(r => r.Key.Id, StringComparer.Ordinal).SelectMany(r => new[] { r.Key.Id, r.Key.Attribute, r.Value }),
    ];
}
