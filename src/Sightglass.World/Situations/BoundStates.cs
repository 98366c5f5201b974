using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Situations;

/// <summary>Rows of a recording of which a case has one: all that it sets is from the same row, as it stood together on that machine.</summary>
/// <param name="Range">The rows, called by their times.</param>
/// <param name="Sets">What each column sets: its rule, and its values by row, SI or the number of a position.</param>
internal sealed record BoundStates(DrawnRange Range, ImmutableArray<(StartRule Rule, ImmutableArray<double> ByRow)> Sets)
{
    public static BoundStates Of(StatesDraw states, IReadOnlyDictionary<string, StartRule> rules)
    {
        RecordedTable table = states.Of!.Table!;
        return new(
            new(SituationStart.RowOrder, $"row of {states.Recording}", 0, 0, null, [.. states.Rows.Select(r => table.Labels[r])]),
            [.. states.Of.Columns.SelectMany((c, i) => c.Sets.Select(s => (rules[s], ByRow(rules[s], table.Columns[i], states.Rows))))]);
    }

    /// <summary>What a case has of its row, as starting values.</summary>
    public IEnumerable<StartValue> Of(StatesDraw states, CaseDraws draws)
    {
        int row = states.Rows[(int)Range.Value(draws)];
        return states.Of!.Columns.Zip(states.Of.Table!.Columns, (column, values) => column.Sets.Select(s => column.HasWords
            ? new StartValue(s, states.Span) { OneOf = [values.WordOf(row)] }
            : new StartValue(s, states.Span) { From = values.Numbers[row], To = values.Numbers[row], Unit = column.Unit })).SelectMany(s => s);
    }

    public void Draw(World world, CaseDraws draws)
    {
        int row = (int)Range.Value(draws);
        foreach ((StartRule rule, ImmutableArray<double> byRow) in Sets)
        {
            BoundStart.Set(world, rule, byRow[row]);
        }
    }

    private static ImmutableArray<double> ByRow(StartRule rule, RecordedValues values, ImmutableArray<int> rows)
    {
        ImmutableArray<int> positions = [.. values.Words.Select(w => rule.Choices.IndexOf(w))];
        return [.. rows.Select(r => positions.IsEmpty ? values.Numbers[r] : positions[(int)values.Numbers[r]])];
    }
}
