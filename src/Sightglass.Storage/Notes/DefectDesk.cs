using Microsoft.EntityFrameworkCore;
using Sightglass.Book.Model;
using Sightglass.Training.Defects;

namespace Sightglass.Storage.Notes;

/// <summary>The defects of one book's machines.</summary>
/// <param name="data">Where they are kept.</param>
/// <param name="clock">This computer's.</param>
public sealed class DefectDesk(DataFolder data, TimeProvider clock)
{
    private DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().Date);

    /// <summary>Open ones first, the oldest first; then those that were mended, the newest first.</summary>
    public IReadOnlyList<Defect> All(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        using RecordsContext records = data.Records();
        return
        [
            .. records.Defects.AsNoTracking().Where(d => d.Book == book.Title).AsEnumerable()
                .OrderBy(d => d.MendedOn is not null).ThenByDescending(d => d.MendedOn).ThenBy(d => d.FoundOn).ThenBy(d => d.Id),
        ];
    }

    /// <summary>Those of one machine that are there on a day.</summary>
    public IReadOnlyList<Defect> Of(ClassBook book, string roadNumber, DateOnly day) => [.. All(book).Where(d => d.RoadNumber == roadNumber && d.IsOpen(day)).OrderBy(d => d.FoundOn)];

    /// <summary>Writes a defect down.</summary>
    /// <returns>Why not, or null once it is on disk.</returns>
    public string? Find(ClassBook book, string roadNumber, string? item, string text, string restriction, string by, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(book);
        Defect defect = new()
        {
            Id = Guid.CreateVersion7(clock.GetUtcNow()),
            Book = book.Title,
            RoadNumber = roadNumber,
            Item = string.IsNullOrWhiteSpace(item) ? null : item.Trim(),
            Text = text.Trim(),
            Restriction = restriction.Trim(),
            FoundBy = by.Trim(),
            FoundOn = on,
        };
        if (DefectRules.WhyNot(book, defect, Today) is { } why)
        {
            return why;
        }

        using RecordsContext records = data.Records();
        records.Defects.Add(defect);
        records.SaveChanges();
        return null;
    }

    /// <summary>Tells a defect to be mended.</summary>
    /// <returns>Why not, or null once it is on disk.</returns>
    public string? Mend(Guid id, string by, DateOnly on)
    {
        using RecordsContext records = data.Records();
        Defect defect = records.Defects.Single(d => d.Id == id);
        if (DefectRules.WhyNotMended(defect, by, on, Today) is { } why)
        {
            return why;
        }

        (defect.MendedBy, defect.MendedOn) = (by.Trim(), on);
        records.SaveChanges();
        return null;
    }
}
