using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Recordings;

/// <summary>A column of a recording with what it is compared with, its names settled.</summary>
/// <param name="Column">As the book has it.</param>
/// <param name="Index">Its place among the recording's columns.</param>
/// <param name="Words">The words of what is compared, by number; empty for numbers.</param>
/// <param name="Machine">What the machine has, SI or the number of a word; only with a state in view.</param>
public sealed record BoundComparison(RecordedColumn Column, int Index, ImmutableArray<string> Words, Func<World.World, double> Machine)
{
    public string Name => Column.Compares!.Text;

    /// <summary>What was recorded in a row, in the same numbers; not a number where nothing was.</summary>
    public double Recorded(RecordedTable table, int row)
    {
        ArgumentNullException.ThrowIfNull(table);
        RecordedValues values = table.Columns[Index];
        return !values.Has(row) ? double.NaN : Words.IsEmpty ? values.Numbers[row] : Words.IndexOf(values.WordOf(row));
    }

    /// <summary>A value as people read it.</summary>
    public string Say(double value) => double.IsNaN(value) ? "nothing" : Words.IsEmpty ? QuantityFormat.Text(value, Column.Unit!) : Words[(int)value];

    /// <summary>Whether the machine is as near to the record as the book says; words must be the same.</summary>
    public bool Agrees(double recorded, double machine) =>
        double.IsNaN(recorded) || (Words.IsEmpty ? Column.Within is not { } within || Math.Abs(machine - recorded) <= within * (1 + 1e-9) : recorded == machine);
}
