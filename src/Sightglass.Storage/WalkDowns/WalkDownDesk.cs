using Microsoft.EntityFrameworkCore;
using Sightglass.Book.Changes;
using Sightglass.Storage.Proposals;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage.WalkDowns;

/// <summary>Takes in what phones hand in: each entry once, in its latest revision, whoever sends it how often and in which order.</summary>
public sealed class WalkDownDesk(DataFolder data, ProposalDesk proposals, TimeProvider clock)
{
    private readonly Lock _one = new();

    /// <summary>Takes a result; when this returns, all of it is on disk.</summary>
    public TakenWalkDown Take(WalkDownResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        lock (_one)
        {
            using RecordsContext records = data.Records();
            (int added, int newer, int known, int proposed) = (0, 0, 0, 0);
            List<(Guid, int)> kept = [];
            foreach (WalkDownFinding finding in result.Entries)
            {
                WalkDownEntry? before = records.WalkDownEntries.FirstOrDefault(e => e.Id == finding.Id);
                kept.Add((finding.Id, Math.Max(before?.Revision ?? 0, finding.Revision)));
                if (before is not null && before.Revision >= finding.Revision)
                {
                    known++;
                    continue;
                }

                WalkDownEntry entry = EntryOf(result, finding);
                if (before is null)
                {
                    records.WalkDownEntries.Add(entry);
                    added++;
                }
                else
                {
                    records.Entry(before).CurrentValues.SetValues(entry);
                    newer++;
                }

                proposed += proposals.Draw(records, entry, finding.Photo is { } photo ? BookChanges.PhotoName(finding.Item ?? finding.Place, photo.Bytes, photo.Ending) : null);
            }

            records.SaveChanges();
            return new(added, newer, known, proposed, [.. kept]);
        }
    }

    /// <summary>Everything found on the machines of a book, by place and item.</summary>
    public IReadOnlyList<WalkDownEntry> All(string book)
    {
        using RecordsContext records = data.Records();
        return [.. records.WalkDownEntries.AsNoTracking().Where(e => e.Book == book).AsEnumerable().OrderBy(e => e.RoadNumber, StringComparer.Ordinal).ThenBy(e => e.Place, StringComparer.Ordinal).ThenBy(e => e.Item, StringComparer.Ordinal)];
    }

    private WalkDownEntry EntryOf(WalkDownResult result, WalkDownFinding finding) => new()
    {
        Id = finding.Id,
        Book = result.Book,
        RoadNumber = result.RoadNumber,
        Place = finding.Place,
        Item = finding.Item,
        State = finding.State,
        Label = Said(finding.Label),
        OpensTowards = Said(finding.OpensTowards),
        Note = Said(finding.Note),
        Photo = finding.Photo is { } photo ? data.Files.Put(photo.Bytes) : null,
        Voice = finding.Voice is { } voice ? data.Files.Put(voice.Bytes) : null,
        Marks = finding.Marks,
        By = finding.By,
        At = finding.At,
        Revision = finding.Revision,
        Phone = result.Phone,
        ReceivedAt = clock.GetUtcNow(),
    };

    private static string? Said(string text) => text.Length > 0 ? text : null;
}
