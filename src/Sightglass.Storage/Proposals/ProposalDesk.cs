using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Sightglass.Basics.Language;
using Sightglass.Book;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Storage.Proposals;

/// <summary>The proposals for one book: drawn up from what was found, looked at as a diff, accepted into the author's files or refused with a reason.</summary>
/// <param name="data">Where they are kept.</param>
/// <param name="bookFolder">The book's.</param>
/// <param name="clock">This computer's.</param>
public sealed class ProposalDesk(DataFolder data, string bookFolder, TimeProvider clock)
{
    private const string Replaced = "A later finding of the same entry took its place.";

    private readonly Lock _one = new();

    /// <summary>With the checks of the plant: a book that is written has to be whole.</summary>
    private readonly BookChanges _changes = new(bookFolder, KindLibrary.Catalog, () => [new Fleet().Add]);

    private readonly BookChanges _texts = new(bookFolder, KindLibrary.Catalog);
    private (string Hash, BookText Text)? _read;

    private static string NoFile => Say.It("its file is not in the data folder; take the result of the walk-down in again");

    private static string NoEntry => Say.It("its finding is not in the data folder, or the book has errors; take the result of the walk-down in again");

    /// <summary>The book as it stands in its folder; read again when a file has changed.</summary>
    /// <exception cref="BookUnreadableException">A file cannot be read as text.</exception>
    public BookText Text
    {
        get
        {
            lock (_one)
            {
                string hash = BookHash.Of(bookFolder);
                if (_read is not var (last, text) || last != hash)
                {
                    _read = (hash, text = _texts.Read());
                }

                return text;
            }
        }
    }

    private string Title => Text.Book?.Title ?? "";

    /// <summary>All of this book, by their numbers.</summary>
    public IReadOnlyList<Proposal> All()
    {
        string title = Title;
        using RecordsContext records = data.Records();
        return [.. records.Proposals.AsNoTracking().Where(p => p.Book == title).OrderBy(p => p.Number)];
    }

    /// <summary>Whether its text may be edited before it is accepted: one that brings a file names it.</summary>
    public static bool CanBeEdited(Proposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return proposal.File is null;
    }

    /// <summary>What accepting it would do to which file; nothing is written.</summary>
    /// <param name="proposal">One of this book.</param>
    /// <param name="edited">What the book is to say instead; null for what is proposed.</param>
    public ChangePlan Look(Proposal proposal, string? edited = null)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return proposal.Property != WalkDownDrafts.Picture ? Text.Plan(ChangeOf(proposal, edited))
            : PictureOf(proposal) is { } picture ? Text.Added(NewPicture.Of(picture))
            : new(null, NoEntry);
    }

    /// <summary>The file that goes with a proposal, or null.</summary>
    public byte[]? FileOf(Proposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return proposal.File is { } name ? Stored(name) : null;
    }

    /// <summary>Writes the change into the book.</summary>
    /// <param name="id">Which.</param>
    /// <param name="by">Who accepts it.</param>
    /// <param name="edited">What the book is to say instead; null for what is proposed. It is proved as that would be, and both are kept.</param>
    /// <returns>Null when it is there; otherwise why not, and the proposal stays open.</returns>
    public string? Accept(Guid id, string by, string? edited = null)
    {
        lock (_one)
        {
            using RecordsContext records = data.Records();
            if (Open(records, id) is not { } proposal)
            {
                return Say.It("It is decided already.");
            }

            string? instead = edited?.ReplaceLineEndings("\n").Trim() is { } text && text != proposal.Becomes ? text : null;
            if (instead is not null && !CanBeEdited(proposal))
            {
                return Say.It("It brings a file, and its text is the name of that.");
            }

            if (instead is { Length: 0 })
            {
                return Say.It("Nothing is left of its text: refuse it instead.");
            }

            // A kill between writing the book and noting it: then the book says so already.
            if (Now(proposal) != (instead ?? proposal.Becomes) && Write(proposal, instead).Refused is { } why)
            {
                return why;
            }

            proposal.Edited = instead;
            Decide(proposal, ProposalState.Accepted, by, null);
            records.SaveChanges();
            return null;
        }
    }

    /// <returns>Null when it is noted; otherwise why not.</returns>
    public string? Refuse(Guid id, string by, string why)
    {
        if (string.IsNullOrWhiteSpace(why))
        {
            return Say.It("A proposal is refused with a reason: write why not.");
        }

        lock (_one)
        {
            using RecordsContext records = data.Records();
            if (Open(records, id) is not { } proposal)
            {
                return Say.It("It is decided already.");
            }

            Decide(proposal, ProposalState.Refused, by, why);
            records.SaveChanges();
            return null;
        }
    }

    /// <summary>Adds what an entry proposes; an open proposal that came from an earlier revision of it gives way. Saved by the caller with the entry.</summary>
    /// <returns>How many are new.</returns>
    internal int Draw(RecordsContext records, WalkDownEntry entry, string? photoName)
    {
        string target = entry.Item ?? entry.Place;
        Proposal[] earlier = [.. records.Proposals.Where(p => p.OriginId == entry.Id)];
        int added = 0;
        HashSet<Guid> stands = [];
        foreach (ProposalDraft draft in WalkDownDrafts.Of(entry, photoName))
        {
            string? now = draft.Property == WalkDownDrafts.Picture ? FileAmongPictures(photoName!) : Text.Current(new(target, draft.Property, null) { RoadNumber = draft.RoadNumber });
            if (now is not { } was || draft.Becomes(was) is not { } becomes)
            {
                continue;
            }

            if (earlier.FirstOrDefault(p => p.Property == draft.Property && p.RoadNumber == draft.RoadNumber && p.Becomes == becomes) is { } same)
            {
                stands.Add(same.Id); // open, or decided: it is not asked twice
                continue;
            }

            records.Proposals.Add(new()
            {
                Id = IdOf(entry, draft.Property),
                Book = entry.Book,
                Number = ProposalNumbers.Next(records, entry.Book),
                Origin = ProposalOrigin.WalkDown,
                OriginId = entry.Id,
                Target = target,
                RoadNumber = draft.RoadNumber,
                Property = draft.Property,
                Was = was.Length > 0 ? was : null,
                Becomes = becomes,
                File = draft.Property is "photo" or WalkDownDrafts.Picture ? entry.Photo : null,
                Why = draft.Why,
                By = entry.By,
                At = clock.GetUtcNow(),
            });
            added++;
        }

        foreach (Proposal gone in earlier.Where(p => p.State == ProposalState.Open && !stands.Contains(p.Id)))
        {
            Decide(gone, ProposalState.Refused, "", Replaced);
        }

        return added;
    }

    /// <summary>What the book says now of what a proposal changes.</summary>
    private string? Now(Proposal proposal) => proposal.Property == WalkDownDrafts.Picture ? FileAmongPictures(proposal.Becomes) : Text.Current(ChangeOf(proposal));

    private string FileAmongPictures(string file) => Text.Book?.Pictures.Values.FirstOrDefault(p => p.File == file)?.File ?? "";

    private ChangePlan Write(Proposal proposal, string? edited)
    {
        if (proposal.File is null)
        {
            return _changes.Apply(ChangeOf(proposal, edited));
        }

        return Stored(proposal.File) is not { } file ? new(null, NoFile)
            : proposal.Property != WalkDownDrafts.Picture ? _changes.ApplyPhoto(ChangeOf(proposal), file, Path.GetExtension(proposal.Becomes))
            : PictureOf(proposal) is { } picture ? _changes.ApplyPicture(picture, file)
            : new(null, NoEntry);
    }

    /// <summary>With the marks of the entry that a proposal came from; null where it is gone, or the book has errors.</summary>
    private Picture? PictureOf(Proposal proposal)
    {
        using RecordsContext records = data.Records();
        return Text.Book is { } book && records.WalkDownEntries.AsNoTracking().FirstOrDefault(e => e.Id == proposal.OriginId) is { } entry
            ? FoundPicture.Of(entry, book, proposal.Becomes, proposal.RoadNumber)
            : null;
    }

    private static Proposal? Open(RecordsContext records, Guid id) => records.Proposals.FirstOrDefault(p => p.Id == id && p.State == ProposalState.Open);

    private static BookChange ChangeOf(Proposal proposal, string? edited = null) => new(proposal.Target, proposal.Property, edited ?? proposal.Becomes) { RoadNumber = proposal.RoadNumber, Was = proposal.Was ?? "" };

    /// <summary>The same for the same revision, so that an entry taken twice proposes once.</summary>
    private static Guid IdOf(WalkDownEntry entry, string property) =>
        new(SHA256.HashData(Encoding.UTF8.GetBytes($"{entry.Id:D} {entry.Revision} {property}")).AsSpan(0, 16));

    private void Decide(Proposal proposal, ProposalState state, string by, string? why) =>
        (proposal.State, proposal.DecidedBy, proposal.DecidedAt, proposal.DecidedWhy) = (state, by, clock.GetUtcNow(), why);

    private byte[]? Stored(string name)
    {
        using FileStream? file = data.Files.Open(name);
        if (file is null)
        {
            return null;
        }

        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }
}
