using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads pictures with where items are in them.</summary>
internal static class PictureReader
{
    private static readonly string[] s_endings = [".jpg", ".jpeg", ".png", ".webp", ".svg"];

    public static Picture? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the picture `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("file", "photos/valve.jpg") & map.Required("shows", "What there is to see, for those who cannot see it.");
        string? file = File(map, context);
        Picture picture = new(entry.Name, entry.Key.Span, file ?? "", map.Text("shows"))
        {
            Place = map.Name("place", NameUse.Place),
            RoadNumbers = map.Names("road number", NameUse.RoadNumber),
            Marks = map.Take("marks") switch
            {
                YamlList list => [.. list.Items.Select(n => Mark(n, context)).OfType<PictureMark>()],
                null or YamlScalar { IsNull: true } => [],
                { } other => Wrong(other, context),
            },
        };
        map.Finish();
        return whole && file is not null ? picture : null;
    }

    private static string? File(MapReader map, ReadContext context)
    {
        if (map.Scalar("file") is not { } s)
        {
            return null;
        }

        if (!BookPath.IsInside(s.Value))
        {
            context.Add(BookMessages.LeavesFolder(s.Span, s.Value));
            return null;
        }

        if (!s_endings.Contains(Path.GetExtension(s.Value), StringComparer.OrdinalIgnoreCase))
        {
            context.Add(BookMessages.OutOfRange(s.Span, "`file`", s.Value, $"a picture that browsers show: {string.Join(", ", s_endings)}"));
            return null;
        }

        return s.Value;
    }

    private static ImmutableArray<PictureMark> Wrong(YamlNode node, ReadContext context)
    {
        context.Add(BookMessages.WrongShape(node.Span, "`marks`", "a list", node.Described));
        return [];
    }

    private static PictureMark? Mark(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the mark", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("item", "ITEM") & map.Required("x", "40 %") & map.Required("y", "25 %") & map.Required("width", "10 %") & map.Required("height", "12 %");
        PictureMark mark = new(map.Name("item", NameUse.Item) ?? "", map.Share("x", 0), map.Share("y", 0), map.Share("width", 0), map.Share("height", 0));
        map.Finish();
        if (whole && (mark.X + mark.Width > 1 + 1e-9 || mark.Y + mark.Height > 1 + 1e-9 || mark.Width <= 0 || mark.Height <= 0))
        {
            context.Add(BookMessages.OutOfRange(node.Span, "the mark", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{mark.X + mark.Width:0.##%} across and {mark.Y + mark.Height:0.##%} down"), "within the picture, and larger than nothing"));
            return null;
        }

        return whole ? mark : null;
    }
}
