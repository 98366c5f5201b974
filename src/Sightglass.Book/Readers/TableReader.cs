using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>
/// Reads a table: a list of rows, each a map by column names or a list in the order of the columns. The first column rises strictly.
/// </summary>
internal sealed class TableReader(KindParameter parameter, ReadContext context)
{
    private readonly ImmutableArray<TableColumn> _columns = TableColumn.Of(parameter);

    public ParameterValue? Read(YamlNode node)
    {
        if (node is not YamlList list)
        {
            context.Add(BookMessages.WrongShape(node.Span, $"`{parameter.Name}`", "a list of rows", node.Described));
            return null;
        }

        (YamlNode Node, ImmutableArray<double> Values)[] rows = [.. list.Items.Select(r => (r, Row(r))).Where(r => !r.Item2.IsDefault)];
        foreach (int i in Enumerable.Range(1, Math.Max(0, rows.Length - 1)).Where(i => !(rows[i].Values[0] > rows[i - 1].Values[0])))
        {
            context.Add(BookMessages.BadTable(rows[i].Node.Span, $"`{_columns[0].Name}` does not rise from row to row", "sort the rows and give no value twice"));
        }

        if (rows.Length == list.Items.Length && rows.Length < 2)
        {
            context.Add(BookMessages.BadTable(node.Span, $"`{parameter.Name}` has fewer than two rows", "give two rows or more"));
        }

        return new(node.Span) { Rows = [.. rows.Select(r => r.Values)] };
    }

    private ImmutableArray<double> Row(YamlNode node)
    {
        double?[] cells = node switch
        {
            YamlMap map => ByName(map),
            YamlList list => InOrder(list),
            _ => NoRow(node),
        };
        return cells.Length == _columns.Length && cells.All(c => c is not null) ? [.. cells.Select(c => c!.Value)] : default;
    }

    private double?[] ByName(YamlMap row)
    {
        MapReader map = new(row, row.Span, "the row", context);
        foreach (TableColumn c in _columns)
        {
            map.Required(c.Name, $"VALUE {UnitTable.SymbolsOf(c.Dimension).FirstOrDefault()}");
        }

        double?[] cells = [.. _columns.Select(c => map.NumberOrNull(c.Name, c.Dimension))];
        map.Finish();
        return cells;
    }

    private double?[] InOrder(YamlList row)
    {
        if (row.Items.Length == _columns.Length)
        {
            return [.. row.Items.Zip(_columns, (n, c) => Values.Scalar(n, $"`{c.Name}`", context) is { } s ? Values.Quantity(s, c.Dimension, context)?.Si : null)];
        }

        context.Add(BookMessages.BadTable(row.Span, row.Items.Length == 1 ? "the row has 1 value" : $"the row has {row.Items.Length} values", $"give {string.Join(", ", _columns.Select(c => $"`{c.Name}`"))}"));
        return [];
    }

    private double?[] NoRow(YamlNode node)
    {
        context.Add(BookMessages.WrongShape(node.Span, "a row", "a map of columns", node.Described));
        return [];
    }
}
