using System.Globalization;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>
/// Where a use stands: added to every position among its parts. Added as written, in decimals, so that 0.1 m and 0.2 m are
/// 0.3 m and not a neighbour of it.
/// </summary>
internal sealed class Offset
{
    private static readonly string[] s_axes = ["x", "y", "z"];

    private readonly Dictionary<string, Quantity> _along = new(StringComparer.Ordinal);

    /// <summary>Reads <c>at</c>; reports what does not fit.</summary>
    public static Offset Read(YamlNode? at, ReadContext context)
    {
        Offset offset = new();
        if (at is null || PointReader.Read(at, "`at`", context) is null || at is not YamlMap map)
        {
            return offset;
        }

        foreach (string axis in s_axes)
        {
            if (map.Find(axis)?.Value is YamlScalar s && Length(s) is { } q)
            {
                offset._along[axis] = q;
            }
        }

        return offset;
    }

    /// <summary>A part with its own position, those of its ports, or the place of a use within, moved.</summary>
    public YamlEntry Move(YamlEntry part) => _along.Count == 0 || part.Value is not YamlMap map
        ? part
        : part with { Value = map with { Entries = [.. map.Entries.Select(e => Assembly.IsUse(part) ? Use(e) : Item(e))] } };

    private YamlEntry Use(YamlEntry e) => e.Name == "at" ? Point(e) : e;

    private YamlEntry Item(YamlEntry e) => e.Name switch
    {
        "position" => Point(e),
        "ports" when e.Value is YamlMap ports => e with { Value = ports with { Entries = [.. ports.Entries.Select(Point)] } },
        _ => e,
    };

    private YamlEntry Point(YamlEntry e) => e.Value is YamlMap map ? e with { Value = map with { Entries = [.. map.Entries.Select(Axis)] } } : e;

    private YamlEntry Axis(YamlEntry e) =>
        _along.TryGetValue(e.Name, out Quantity by) && e.Value is YamlScalar s && Length(s) is { } own ? e with { Value = s with { Value = Sum(own, by) } } : e;

    private static string Sum(Quantity a, Quantity b)
    {
        bool same = a.Unit == b.Unit;
        decimal sum = same ? (decimal)a.Value + (decimal)b.Value : (decimal)a.Si + (decimal)b.Si;
        return string.Create(CultureInfo.InvariantCulture, $"{sum} {(same ? a.Unit.Symbol : UnitTable.SiOf(Dimension.Metre).Symbol)}");
    }

    /// <summary>A length that a decimal holds, or null: the reader of the part says what is wrong with it.</summary>
    private static Quantity? Length(YamlScalar s) =>
        QuantityText.TryParse(s.Value.Trim(), default, Dimension.Metre, [], out Quantity q) && Math.Abs(q.Si) < 1e9 && Math.Abs(q.Value) < 1e12 ? q : null;
}
