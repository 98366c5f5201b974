using System.Collections.Immutable;

namespace Sightglass.Trials.Recordings;

/// <summary>How far the machine is from what one column recorded, over the rows that were run.</summary>
/// <param name="Comparison">The column with what it is compared with.</param>
/// <param name="Rows">Rows that have something recorded, and a machine that ran.</param>
/// <param name="Further">Those in which the machine is further away than the book says, or has another word.</param>
/// <param name="Mean">Machine less record on average, in SI; not a number for words, and where nothing was compared.</param>
/// <param name="Greatest">Machine less record where that is furthest from nothing; not a number likewise.</param>
/// <param name="At">The row in which it is furthest away, or the first that has another word; null where none is away at all.</param>
public sealed record ColumnApart(BoundComparison Comparison, int Rows, int Further, double Mean, double Greatest, ComparedRow? At)
{
    internal static ColumnApart Of(BoundComparison comparison, int index, ImmutableArray<ComparedRow> compared)
    {
        ComparedRow[] rows = [.. compared.Where(r => !double.IsNaN(r.Recorded[index]) && !double.IsNaN(r.Machine[index]))];
        int further = compared.Count(r => !comparison.Agrees(r.Recorded[index], r.Machine[index]));
        if (!comparison.Words.IsEmpty)
        {
            return new(comparison, rows.Length, further, double.NaN, double.NaN, Array.Find(rows, r => r.Recorded[index] != r.Machine[index]));
        }

        ComparedRow? at = rows.MaxBy(Away);
        return new(comparison, rows.Length, further, rows.Length == 0 ? double.NaN : rows.Average(Difference), at is null ? double.NaN : Difference(at), at is null || Difference(at) == 0 ? null : at);

        double Difference(ComparedRow row) => row.Machine[index] - row.Recorded[index];

        double Away(ComparedRow row) => Math.Abs(Difference(row));
    }
}
