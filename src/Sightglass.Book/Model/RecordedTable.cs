using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>The rows of a recording, as far as its columns are named in the book.</summary>
/// <param name="Source">The file.</param>
/// <param name="Times">Seconds: since midnight of the day of the first row, or as the file counts them. Never going back.</param>
/// <param name="Labels">The time of each row as it is written, which names the row.</param>
/// <param name="IsClock">Whether times are those of a clock.</param>
/// <param name="Columns">In the order of the recording's columns.</param>
public sealed record RecordedTable(SourceText Source, ImmutableArray<double> Times, ImmutableArray<string> Labels, bool IsClock, ImmutableArray<RecordedValues> Columns)
{
    public int Rows => Times.Length;

    /// <summary>The place of the first row at or after a moment.</summary>
    public int RowAt(double seconds)
    {
        int found = Times.BinarySearch(seconds);
        while (found > 0 && Times[found - 1] >= seconds)
        {
            found--;
        }

        return found >= 0 ? found : ~found;
    }
}
