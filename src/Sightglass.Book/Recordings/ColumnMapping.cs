using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>What somebody says a column of a file is, as it is typed.</summary>
/// <param name="Head">As in the file.</param>
public sealed record ColumnMapping(string Head)
{
    /// <summary>Starting values as situations write them.</summary>
    public ImmutableArray<string> Sets { get; init; } = [];

    /// <summary>An indication or a formula; empty where it is compared with nothing.</summary>
    public string Compares { get; init; } = "";

    /// <summary>In what its numbers are; empty where the head says it, or where it has words.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What its texts mean, in the order of the file; one that means nothing yet is empty.</summary>
    public ImmutableArray<(string Text, string Means)> As { get; init; } = [];

    /// <summary>How far the machine may be from what was recorded; empty where nothing is said.</summary>
    public string Within { get; init; } = "";

    /// <summary>Whether it means something; all others are passed over.</summary>
    public bool IsUsed => !Sets.IsEmpty || Compares.Length > 0;

    /// <summary>A column of a book, to be changed.</summary>
    public static ColumnMapping Of(RecordedColumn column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return new(column.Head)
        {
            Sets = column.Sets,
            Compares = column.Compares?.Text ?? "",
            Unit = column.Unit is { } unit && unit != RecordingHead.UnitIn(column.Head) ? unit.Symbol : "",
            As = [.. column.As.Select(a => (a.Key, a.Value))],
            Within = column is { Within: { } within, Unit: { } of } ? string.Create(CultureInfo.InvariantCulture, $"{within / Difference(of).Factor:0.#########} {Difference(of).Symbol}") : "",
        };
    }

    /// <summary>A unit for a difference: that of two temperatures has no zero of its own.</summary>
    public static Unit Difference(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit.IsScale ? UnitTable.Get("K") : unit;
    }

    internal YamlMap Entry()
    {
        NewEntry entry = new NewEntry().Text("column", Head);
        _ = Sets is [var only] ? entry.Text("sets", only) : entry.Texts("sets", Sets);
        return entry.Text("compares", Compares).Text("unit", Unit).Maps("as", As.Where(a => a.Means.Length > 0), a => (a.Text, NodeText.Text(a.Means))).Text("within", Within).Map;
    }
}
