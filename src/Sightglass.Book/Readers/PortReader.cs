using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads the ports of a store.</summary>
internal static class PortReader
{
    public static ImmutableSortedDictionary<string, Port> Read(YamlNode? node, ReadContext context)
    {
        ImmutableSortedDictionary<string, Port>.Builder ports = ImmutableSortedDictionary.CreateBuilder<string, Port>(StringComparer.Ordinal);
        if (node is not null && MapReader.AsMap(node, "`ports`", context) is { } map)
        {
            foreach (YamlEntry e in map.Entries)
            {
                if (NameRules.Check(e.Key, context) && One(e, context) is { } port)
                {
                    ports.Add(e.Name, port);
                }
            }
        }

        return ports.ToImmutable();
    }

    private static Port? One(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the port `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        map.Required("height", "0 mm");
        double height = map.Number("height", Dimension.Metre);
        if (height < 0)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("height"), "`height`", map.Text("height"), "0 or more, measured from the floor of the store"));
        }

        Port port = new(entry.Name, entry.Key.Span, height, map.NumberOrNull("x", Dimension.Metre), map.NumberOrNull("y", Dimension.Metre));
        map.Finish();
        return port;
    }
}
