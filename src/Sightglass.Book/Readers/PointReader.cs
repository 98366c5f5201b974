using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads a position in the class's axes: <c>{ x: 8.0 m, y: 0 m, z: 0.45 m }</c>.</summary>
internal static class PointReader
{
    public static Point3? Read(YamlNode node, string owner, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, owner, context) is not { } map)
        {
            return null;
        }

        Point3 point = Read(map);
        map.Finish();
        return point;
    }

    /// <summary>The keys x, y, z of a map that has others too; z may be absent and is 0 then.</summary>
    public static Point3 Read(MapReader map)
    {
        map.Required("x", "8.0 m");
        map.Required("y", "0 m");
        return new(map.Number("x", Dimension.Metre), map.Number("y", Dimension.Metre), map.Number("z", Dimension.Metre));
    }
}
