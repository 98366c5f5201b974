using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads systems, coupling ends and silhouettes.</summary>
internal static class MachineReader
{
    public static SystemSheet? ReadSystem(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the system `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        string medium = map.Choice("medium", "fuel", "main", "brake", "power", "control", "water");
        SystemSheet system = new(entry.Name, entry.Key.Span, medium, map.YesNo("alive", absent: false), map.Text("text"));
        map.Finish();
        return system;
    }

    public static CouplingEnd? ReadEnd(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the end `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        map.Required("faces", "front");
        Side faces = map.Choice("faces", "front", "rear") == "rear" ? Side.Rear : Side.Front;
        CouplingEnd end = new(entry.Name, entry.Key.Span, faces, map.Names("items", NameUse.Item)) { Joins = Joins(map.Take("joins"), context) };
        end = end with { Mistaken = [.. Mistaken(map.Take("mistaken"), end, context)], Gangway = Gangway(map.Take("gangway"), context) };
        map.Finish();
        return end;
    }

    private static (string Place, double Seconds, ImmutableArray<string> Through)? Gangway(YamlNode? node, ReadContext context)
    {
        if (node is null || MapReader.Of(node, node.Span, "the gangway", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("from", "PLACE") & map.Required("takes", "3 s");
        string? place = map.Name("from", NameUse.Place);
        double seconds = map.Positive("takes", Dimension.Second, 1);
        ImmutableArray<string> through = map.Names("through", NameUse.Item);
        map.Finish();
        return whole && place is not null ? (place, seconds, through) : null;
    }

    private static IEnumerable<(string Line, string Other, Span Span)> Mistaken(YamlNode? node, CouplingEnd end, ReadContext context)
    {
        foreach (YamlEntry line in node is not null && MapReader.AsMap(node, "`mistaken`", context) is { } map ? map.Entries : [])
        {
            foreach (YamlScalar other in Values.List(line.Value, $"`{line.Name}`", context))
            {
                if (IsJoined(line.Key, end, context) & IsJoined(other, end, context))
                {
                    yield return (line.Name, other.Value, other.Span);
                }
            }
        }
    }

    private static bool IsJoined(YamlScalar line, CouplingEnd end, ReadContext context)
    {
        if (!end.Joins.ContainsKey(line.Value))
        {
            context.Add(BookMessages.NotAChoice(line.Span, "`mistaken`: its lines stand under `joins`", line.Value, end.Joins.Keys));
            return false;
        }

        return true;
    }

    private static ImmutableSortedDictionary<string, (string Item, Span Span)> Joins(YamlNode? node, ReadContext context)
    {
        var joins = ImmutableSortedDictionary.CreateBuilder<string, (string Item, Span Span)>(StringComparer.Ordinal);
        foreach (YamlEntry line in node is not null && MapReader.AsMap(node, "`joins`", context) is { } map ? map.Entries : [])
        {
            if (NameRules.Check(line.Key, context) && Values.Scalar(line.Value, $"`{line.Name}`", context) is { } item)
            {
                context.Uses(NameUse.Item, item.Value, item.Span);
                joins[line.Name] = (item.Value, item.Span);
            }
        }

        return joins.ToImmutable();
    }

    public static Silhouette? ReadSilhouette(YamlEntry entry, ReadContext context)
    {
        Side? side = entry.Name switch { "right" => Side.Right, "rear" => Side.Rear, "left" => Side.Left, "front" => Side.Front, _ => null };
        if (side is null)
        {
            context.Add(BookMessages.NotAChoice(entry.Key.Span, "`silhouettes`", entry.Name, ["right", "rear", "left", "front"]));
        }

        if (entry.Value is not YamlList list)
        {
            context.Add(BookMessages.WrongShape(entry.Value.Span, $"the silhouette `{entry.Name}`", "a list of shapes", entry.Value.Described));
            return null;
        }

        ImmutableArray<Shape> shapes = [.. list.Items.Select(n => ReadShape(n, context)).OfType<Shape>()];
        return side is { } s ? new(s, entry.Key.Span, shapes) : null;
    }

    private static Shape? ReadShape(YamlNode node, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the shape", context) is not { } map)
        {
            return null;
        }

        map.Required("path", "M 0 1 L 20 1");
        string style = map.Choice("style", "outline", "part", "detail", "tint", "glass", "solid", "lettering");
        string? text = style == "lettering" ? Lettering(map) : null;
        YamlScalar? path = map.Scalar("path");
        map.Finish();
        if (path is null)
        {
            return null;
        }

        if (PathData.Problem(path.Value) is { } problem)
        {
            context.Add(BookMessages.BadPath(Values.Content(path), problem));
            return null;
        }

        return new(style, path.Value.Trim(), text);
    }

    private static string Lettering(MapReader map)
    {
        map.Required("text", "LETTERS");
        return map.Text("text");
    }
}
