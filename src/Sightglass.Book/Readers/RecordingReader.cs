using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads recordings: what the columns of a file are of the book, and the file itself where there are files.</summary>
/// <param name="context">Takes findings and names.</param>
/// <param name="scope">The names that may be set.</param>
/// <param name="vehicles">Of its train.</param>
/// <param name="files">Gives the text of a file that is named at a place, or null after saying why not; null where there are no files.</param>
internal sealed class RecordingReader(ReadContext context, StartScope scope, ImmutableArray<Vehicle> vehicles, Func<string, Span, SourceText?>? files)
{
    private readonly EachCar _each = new(vehicles, scope, context);

    public Recording? Read(YamlEntry entry)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the recording `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("file", "recordings/FILE.csv") & map.Required("time", "HEAD OF A COLUMN") & map.Required("columns", "[ { column: HEAD, sets: NAME, unit: UNIT } ]");
        (string? file, Span fileSpan) = FileOf(map);
        Recording recording = new(entry.Name, entry.Key.Span)
        {
            Text = map.Text("text"),
            File = file ?? "",
            FileSpan = fileSpan,
            Train = map.Name("train", NameUse.Train),
            Time = map.Text("time"),
            TimeSpan = map.SpanOf("time"),
            TimeUnit = UnitOf(map, "time unit", Dimension.Second) ?? UnitTable.Get("s"),
            Separator = !map.Has("separator") ? null : map.Choice("separator", "comma", "semicolon", "tab") switch { "semicolon" => ';', "tab" => '\t', _ => ',' },
            HasDecimalComma = map.Choice("decimal", "point", "comma") == "comma",
            HeadLine = map.Whole("heads in line"),
            FirstLine = map.Whole("rows from line"),
            Missing = [.. map.List("missing").Select(m => m.Value.Trim())],
            Columns = [.. map.Elements("columns").Select(Column).OfType<RecordedColumn>()],
        };
        map.Finish();
        if (!whole || file is null)
        {
            return null;
        }

        bool sound = Once(recording) && recording.Columns.Length == map.Elements("columns").Length;
        return files is null || !sound ? recording
            : files(file, fileSpan) is { } source && RecordingFile.Read(source, recording, context.Found) is { } read ? read
            : recording;
    }

    private (string? File, Span Span) FileOf(MapReader map)
    {
        if (map.Scalar("file") is not { } s)
        {
            return default;
        }

        if (!BookPath.IsInside(s.Value))
        {
            context.Add(BookMessages.LeavesFolder(s.Span, s.Value));
            return default;
        }

        if (!s.Value.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            context.Add(BookMessages.NotCsv(s.Span, s.Value));
            return default;
        }

        return (s.Value, s.Span);
    }

    private Unit? UnitOf(MapReader map, string key, Dimension? dimension)
    {
        if (map.Scalar(key) is not { } s)
        {
            return null;
        }

        Unit? unit = UnitTable.Find(s.Value.Trim());
        if (unit is null)
        {
            context.Add(BookMessages.UnknownUnit(s.Span, s.Value, UnitTable.Symbols));
        }
        else if (dimension is { } wanted && unit.Dimension != wanted)
        {
            context.Add(BookMessages.WrongUnit(s.Span, unit, key, wanted));
            return null;
        }

        return unit;
    }

    private RecordedColumn? Column(YamlNode node)
    {
        if (MapReader.Of(node, node.Span, "the column", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("column", "HEAD");
        YamlScalar? head = map.Scalar("column");
        ImmutableArray<YamlScalar> sets = [.. map.List("sets").SelectMany(_each.Expand)];
        Unit? unit = UnitOf(map, "unit", null);
        RecordedColumn column = new((head?.Value ?? "").Trim(), head?.Span ?? node.Span)
        {
            Sets = [.. sets.Select(s => s.Value)],
            Compares = map.Formula("compares"),
            Unit = unit,
            As = As(map),
            Within = Within(map, unit ?? RecordingHead.UnitIn(head?.Value ?? "")),
        };
        map.Finish();
        if (whole && sets.IsEmpty && column.Compares is null)
        {
            context.Add(BookMessages.MissingKey(node.Span, "sets", $"the column `{column.Head}`", "QUANTITY of ITEM`, or `compares: INDICATION"));
            return null;
        }

        return !whole || (map.Has("unit") && unit is null) ? null : Settled(column, sets, map.SpanOf("unit"));
    }

    private ImmutableSortedDictionary<string, string> As(MapReader map)
    {
        var found = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (YamlEntry entry in map.Entries("as"))
        {
            if (Values.Scalar(entry.Value, $"`{entry.Name}`", context) is { } s)
            {
                found[entry.Name.Trim()] = s.Value.Trim();
            }
        }

        return found.ToImmutable();
    }

    /// <summary>A difference: that of two temperatures has no zero of its own.</summary>
    private double? Within(MapReader map, Unit? unit) =>
        map.Scalar("within") is { } s && unit is not null && Values.Quantity(s, unit.Dimension, context) is { } q ? Math.Abs(q.Value * q.Unit.Factor) : null;

    /// <summary>The column with what its names mean; null where one of them cannot be set so.</summary>
    private RecordedColumn? Settled(RecordedColumn column, ImmutableArray<YamlScalar> sets, Span unitSpan)
    {
        RecordedColumn? settled = column;
        foreach (YamlScalar s in sets)
        {
            StartMeaning? meaning = scope.Find(s.Value, s.Span, context);
            settled = meaning is not { } means || settled is null ? null
                : means.Positions.IsDefault ? Number(settled, s, means.Dimension, unitSpan)
                : Position(settled, s, means.Positions, unitSpan);
        }

        return settled;
    }

    private RecordedColumn? Number(RecordedColumn column, YamlScalar set, Dimension dimension, Span unitSpan)
    {
        Unit? unit = column.Unit ?? RecordingHead.UnitIn(column.Head);
        if (unit is null)
        {
            context.Add(BookMessages.NoUnitOfColumn(column.Span, column.Head, UnitTable.SymbolsOf(dimension).FirstOrDefault() ?? "1"));
            return null;
        }

        if (unit.Dimension != dimension)
        {
            context.Add(BookMessages.WrongUnit(column.Unit is null ? column.Span : unitSpan, unit, set.Value, dimension));
            return null;
        }

        return column;
    }

    private RecordedColumn? Position(RecordedColumn column, YamlScalar set, ImmutableArray<string> positions, Span unitSpan)
    {
        if (column.Unit is not null)
        {
            context.Add(BookMessages.UnitOfWords(unitSpan, set.Value, positions));
            return null;
        }

        string[] wrong = [.. column.As.Values.Where(p => !positions.Contains(p)).Distinct(StringComparer.Ordinal)];
        foreach (string position in wrong)
        {
            context.AddMissing(BookMessages.NoSuchPosition(column.Span, position, set.Value, positions));
        }

        return wrong.Length > 0 ? null : column with { Positions = column.Positions.IsEmpty ? positions : [.. column.Positions.Where(positions.Contains)] };
    }

    private bool Once(Recording recording)
    {
        Dictionary<string, Span> first = new(StringComparer.Ordinal);
        bool once = true;
        foreach ((string name, Span span) in recording.Columns.SelectMany(c => c.Sets.Select(s => (s, c.Span))))
        {
            if (!first.TryAdd(name, span))
            {
                context.Add(BookMessages.SetTwice(span, name, first[name]));
                once = false;
            }
        }

        return once;
    }
}
