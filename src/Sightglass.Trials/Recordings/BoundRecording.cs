using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Trials.Recordings;

/// <summary>A recording on a plan: what its columns are compared with.</summary>
/// <param name="Recording">As the book has it.</param>
/// <param name="Plan">Of the machine, or of its train.</param>
/// <param name="Comparisons">The columns that are compared with something.</param>
public sealed record BoundRecording(Recording Recording, Plan Plan, ImmutableArray<BoundComparison> Comparisons)
{
    private static readonly ImmutableArray<string> s_yesNo = ["no", "yes"];

    /// <param name="recording">Of the book.</param>
    /// <param name="plan">In whose names it is.</param>
    /// <param name="found">Takes W032 and what is wrong with formulas.</param>
    /// <returns>Null where something does not fit.</returns>
    public static BoundRecording? Bind(Recording recording, Plan plan, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(found);
        BoundComparison?[] comparisons = [.. recording.Columns.Select((c, i) => (c, i)).Where(c => c.c.Compares is not null).Select(c => Bind(c.c, c.i, plan, found))];
        return comparisons.Contains(null) ? null : new(recording, plan, [.. comparisons!]);
    }

    private static BoundComparison? Bind(RecordedColumn column, int index, Plan plan, DiagnosticList found)
    {
        FormulaText text = column.Compares!;
        if (plan.Items.TryGetValue(text.Text, out ItemPlan? item))
        {
            if (item.Item.Reading is { } reading && item.Shown is not null)
            {
                return Number(column, index, reading.Unit.Dimension, world => world.Read(item.Item) ?? double.NaN, found);
            }

            if ((item.Lit is { } lit ? Condition(column, index, lit, found) : item.Position is { } slot ? Words(column, index, item.Item.Positions, world => world.GetSlot(slot), found) : null) is { } ofItem)
            {
                return ofItem;
            }
        }

        if (plan.Signs.TryGetValue(text.Text, out Signal? sign))
        {
            return Condition(column, index, sign, found);
        }

        if (FormulaParser.Parse(text.Text, text.Span, plan.Scope, found, FormulaKind.Any) is not { } formula)
        {
            return null;
        }

        FormulaSignal signal = new(formula);
        return formula.IsCondition ? Condition(column, index, signal, found) : Number(column, index, formula.Dimension, world => world.Value(signal), found);
    }

    private static BoundComparison? Condition(RecordedColumn column, int index, Signal margin, DiagnosticList found) =>
        Words(column, index, s_yesNo, world => world.Value(margin) >= 0 ? 1 : 0, found);

    private static BoundComparison? Number(RecordedColumn column, int index, Dimension dimension, Func<World.World, double> machine, DiagnosticList found)
    {
        // In a book that is read from texts, heads were not read, and a unit may stand there.
        if (column.Unit is { } unit ? unit.Dimension == dimension : column.As.IsEmpty && column.Positions.IsEmpty)
        {
            return new(column, index, [], machine);
        }

        found.Error("W032", column.Compares!.Span, $"`{column.Compares.Text}` is {dimension}, the column `{column.Head}` is {column.Unit?.Dimension.ToString() ?? "words"}", "compare it with what it shows, or mend its `unit`");
        return null;
    }

    private static BoundComparison? Words(RecordedColumn column, int index, ImmutableArray<string> words, Func<World.World, double> machine, DiagnosticList found)
    {
        string[] wrong = [.. column.As.Values.Where(w => !words.Contains(w))];
        if (column.Unit is null && wrong.Length == 0)
        {
            return new(column, index, words, machine);
        }

        found.Error("W032", column.Compares!.Span, $"`{column.Compares.Text}` is {string.Join(" or ", words)}, the column `{column.Head}` is {(wrong.Length > 0 ? $"`{wrong[0]}`" : column.Unit!.Dimension.ToString())}", "say under `as` which text is which of them");
        return null;
    }
}
