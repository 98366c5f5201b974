using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads what a vehicle weighs, resists and pulls.</summary>
internal static class HaulingReader
{
    private static readonly string[] s_forms = ["passenger", "locomotive", "freight", "modified"];

    /// <param name="node">Of the key <c>running</c>; null where there is none.</param>
    /// <param name="owner">Where the vehicle is named.</param>
    /// <param name="context">Takes findings.</param>
    public static Hauling? Read(YamlNode? node, Span owner, ReadContext context)
    {
        if (node is null || MapReader.Of(node, node.Span, "`hauling`", context) is not { } map)
        {
            return null;
        }

        Hauling usual = new(owner);
        Hauling hauling = new(node.Span)
        {
            Mass = Given(map, "mass", Dimension.Kilogram),
            Axles = map.Whole("axles") ?? usual.Axles,
            DrivenAxles = map.Whole("driven axles") ?? 0,
            Front = map.Positive("front", Dimension.Area, usual.Front),
            Resistance = (ResistanceSort)Array.IndexOf(s_forms, map.Choice("resistance", s_forms)),
            Power = Given(map, "power", Dimension.Power),
            Efficiency = map.Share("efficiency", usual.Efficiency),
            HandBrake = Given(map, "hand brake", Dimension.Force),
        };
        if (hauling.DrivenAxles > hauling.Axles)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("driven axles"), "`driven axles`", map.Text("driven axles"), $"no more than its {hauling.Axles} axles"));
        }

        map.Finish();
        return hauling;
    }

    private static double? Given(MapReader map, string key, Dimension dimension)
    {
        double value = map.Positive(key, dimension, 0);
        return value > 0 ? value : null;
    }
}
