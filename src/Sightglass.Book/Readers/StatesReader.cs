using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads from which rows of a recording a situation draws.</summary>
internal sealed class StatesReader(ReadContext context, ImmutableSortedDictionary<string, Recording> recordings)
{
    /// <summary>Rows of which one is drawn.</summary>
    public const int MostRows = 10_000;

    /// <param name="node">What stands under <c>states</c>.</param>
    /// <param name="situation">What the situation says beside it.</param>
    public StatesDraw? Read(YamlNode? node, Situation situation)
    {
        if (node is null || MapReader.Of(node, node.Span, "`states`", context) is not { } map || !map.Required("recording", "RECORDING"))
        {
            return null;
        }

        YamlScalar? name = map.Scalar("recording");
        (YamlScalar? from, YamlScalar? to) = (map.Scalar("from"), map.Scalar("to"));
        double every = map.NotNegative("every", Dimension.Second, new(0, 0, UnitTable.SiOf(Dimension.Second))).From;
        map.Finish();
        if (name is null)
        {
            return null;
        }

        context.Uses(NameUse.Recording, name.Value, name.Span);
        if (!recordings.TryGetValue(name.Value, out Recording? recording))
        {
            return null;
        }

        if (recording.Train != situation.Train)
        {
            context.Add(BookMessages.OtherTrain(name.Span, recording.Name, recording.Train));
        }

        foreach (StartValue twice in situation.Start.Where(s => recording.Columns.Any(c => c.Sets.Contains(s.Name))))
        {
            context.Add(BookMessages.SetTwice(twice.Span, twice.Name, recording.Columns.First(c => c.Sets.Contains(twice.Name)).Span));
        }

        return new(recording.Name, name.Span) { Of = recording, Rows = recording.Table is { } table ? Rows(recording, table, name.Span, Moment("from", from, table), Moment("to", to, table), every) : [] };
    }

    /// <summary>A moment in the seconds of a table; null where none is written or it is not understood.</summary>
    private double? Moment(string key, YamlScalar? text, RecordedTable table)
    {
        if (text is null)
        {
            return null;
        }

        DiagnosticList notes = [];
        double? read = table.IsClock ? RecordingTime.Clock(text.Value.Trim())
            : QuantityText.TryParse(text.Value.Trim(), Values.Content(text), Dimension.Second, notes, out Quantity q) ? q.Si : null;
        if (read is null)
        {
            context.Add(BookMessages.NotAMoment(text.Span, key, text.Value, table.IsClock));
        }

        return read + (table.IsClock && read < table.Times[0] - (RecordingTime.Day / 2) ? RecordingTime.Day : 0);
    }

    private ImmutableArray<int> Rows(Recording recording, RecordedTable table, Span span, double? from, double? to, double every)
    {
        RecordedValues[] set = [.. table.Columns.Where((_, i) => recording.Columns[i].Sets.Length > 0)];
        List<int> rows = [];
        (bool any, double next) = (false, from ?? double.NegativeInfinity);
        for (int row = table.RowAt(next); row < table.Rows && table.Times[row] <= (to ?? double.PositiveInfinity); row++)
        {
            any = true;
            if (table.Times[row] >= next && set.All(c => c.Has(row)))
            {
                rows.Add(row);
                next = every > 0 ? table.Times[row] + every : next;
            }
        }

        if (rows.Count == 0)
        {
            context.Add(BookMessages.NoRows(span, recording.Name, any ? "each row of the stretch lacks a value that is set" : $"it goes from {table.Labels[0]} to {table.Labels[^1]}"));
        }
        else if (rows.Count > MostRows)
        {
            context.Add(BookMessages.TooManyStates(span, recording.Name, rows.Count, MostRows));
        }

        return [.. rows];
    }
}
