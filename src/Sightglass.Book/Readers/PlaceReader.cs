using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads places and the legs between them.</summary>
internal static class PlaceReader
{
    public static Place? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the place `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        Point3 position = PointReader.Read(map);
        string text = map.Text("text");
        int? room = map.Whole("room");
        map.Finish();
        return new(entry.Name, entry.Key.Span, position, position.Z == 0, text) { Room = room };
    }

    public static Leg? ReadLeg(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the leg", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("from", "PLACE") & map.Required("to", "PLACE") & map.Required("takes", "12 s");
        string? from = map.Name("from", NameUse.Place);
        string? to = map.Name("to", NameUse.Place);
        Leg leg = new(from ?? "", to ?? "", node.Span, map.Positive("takes", Dimension.Second, 1), map.Text("by")) { Through = map.Names("through", NameUse.Item) };
        map.Finish();
        if (whole && from is not null && from == to)
        {
            context.Add(BookMessages.ToItself(map.SpanOf("to"), "the leg", from));
        }

        return whole && from is not null && to is not null ? leg : null;
    }
}
