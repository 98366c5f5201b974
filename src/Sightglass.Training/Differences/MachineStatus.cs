using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Training.Defects;

namespace Sightglass.Training.Differences;

/// <summary>How one machine stands on a day: what has been changed on it, what is still to come, what does not work.</summary>
/// <param name="Done">Oldest first.</param>
/// <param name="ToCome">Those whose day is later.</param>
/// <param name="Defects">Oldest first.</param>
public sealed record MachineStatus(DateOnly Day, ImmutableArray<Modification> Done, ImmutableArray<Modification> ToCome, ImmutableArray<Defect> Defects)
{
    public bool IsEmpty => Done.IsEmpty && ToCome.IsEmpty && Defects.IsEmpty;

    /// <param name="book">Of one road number; a class has no status.</param>
    /// <param name="day">Modifications without a day count as done.</param>
    /// <param name="defects">Of all machines and days.</param>
    public static MachineStatus Of(ClassBook book, DateOnly day, IEnumerable<Defect> defects)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (book.RoadNumberInUse is not { } number)
        {
            return new(day, [], [], []);
        }

        ILookup<bool, Modification> byDone = book.RoadNumbers[number].Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue).ToLookup(m => m.Since is not { } since || since <= day);
        return new(day, [.. byDone[true]], [.. byDone[false]], [.. defects.Where(d => d.RoadNumber == number && d.IsOpen(day)).OrderBy(d => d.FoundOn)]);
    }
}
