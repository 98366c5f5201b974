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

        StatesDraw states = new(name.Value, name.Span) { From = from?.Value.Trim(), To = to?.Value.Trim(), Every = every };
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

        if (recording.Table is not { } table)
        {
            return states with { Of = recording };
        }

        DiagnosticList found = [];
        (double? first, double? last) = (Moment("from", from, table, found), Moment("to", to, table, found));
        ImmutableArray<int> rows = found.HasErrors ? [] : RecordedRows.Of(recording, table, name.Span, first, last, every, found);
        context.Found.AddRange(found);
        return states with { Of = recording, Rows = rows };
    }

    private static double? Moment(string key, YamlScalar? text, RecordedTable table, DiagnosticList found) => text is null ? null : RecordedRows.Moment(key, text.Value, text.Span, table, found);
}
