using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Storage;
using Sightglass.Training.Papers;
using Sightglass.Trials;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Papers;

/// <summary>The cards of the book that is served, their editions, and where the copies are: what the page of papers does.</summary>
/// <param name="shelf">The book.</param>
/// <param name="data">Where it is kept.</param>
/// <param name="clock">This computer's.</param>
public sealed class PaperDesk(BookShelf shelf, DataDesk data, TimeProvider clock)
{
    /// <summary>Of each situation, for an edition's stamp.</summary>
    public const int Cases = 512;

    private const ulong Seed = 1;

    private readonly Lock _one = new();

    private (ServedBook Of, ImmutableArray<(SourceText Text, string Title)> Cards)? _titles;

    /// <summary>Every card of the book, in the order of its files.</summary>
    public ImmutableArray<CardShelf> All()
    {
        using RecordsContext records = data.Records();
        PaperEdition[] editions = [.. records.PaperEditions.AsNoTracking().Where(e => e.Book == shelf.Book.Title)];
        HashSet<Guid> own = [.. editions.Select(e => e.Id)];
        PaperEvent[] events = [.. records.PaperEvents.AsNoTracking().Where(e => own.Contains(e.Edition))];
        PaperCopy[] copies = [.. records.PaperCopies.AsNoTracking().Where(c => own.Contains(c.Edition))];
        ILookup<string, PaperEdition> byCard = editions.ToLookup(e => e.Card, StringComparer.Ordinal);
        return
        [
            .. Titles(shelf.Now).Select(c => new CardShelf(Path.GetFileNameWithoutExtension(c.Text.Path), c.Title, c.Text, EditionFile.Of(byCard[c.Title], events, copies, c.Text.Text))),
        ];
    }

    /// <summary>Tries the card as it stands and keeps it as a new edition.</summary>
    /// <returns>Null when it is kept; otherwise why not.</returns>
    public string? Make(CardShelf card, string by, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(card);
        if (string.IsNullOrWhiteSpace(by))
        {
            return Say.It("Write who made it: a paper names them.");
        }

        if (card.Latest is { IsTextChanged: false, State: not PaperState.Withdrawn } same)
        {
            return Say.With($"Edition {same.Number} has this very text.");
        }

        ServedBook book = shelf.Now;
        (string tried, bool passed) = Try(book, card.Text, stop);
        DateTimeOffset now = clock.GetUtcNow();
        using RecordsContext records = data.Records();
        records.PaperEditions.Add(new()
        {
            Id = IdOf(book.Book.Title, card.Title, now.UtcTicks.ToString(CultureInfo.InvariantCulture)),
            Book = book.Book.Title,
            Card = card.Title,
            Text = card.Text.Text,
            TextHash = EditionFile.HashOf(card.Text.Text),
            BookEdition = book.Hash,
            Tried = tried,
            Passed = passed,
            By = by.Trim(),
            MadeAt = now,
        });
        records.SaveChanges();
        return null;
    }

    /// <returns>Null when it is noted; otherwise why not.</returns>
    public string? Move(Guid edition, PaperState to, string by, string? note) => Change(edition, (records, file) =>
    {
        if (PaperMoves.Hindrance(file.Edition, file.State, to, by, note) is { } hindrance)
        {
            return hindrance;
        }

        DateTimeOffset now = clock.GetUtcNow();
        records.PaperEvents.Add(new() { Id = IdOf(edition.ToString(), to.ToString(), now.UtcTicks.ToString(CultureInfo.InvariantCulture)), Edition = edition, State = to, By = by.Trim(), At = now, Note = string.IsNullOrWhiteSpace(note) ? null : note.Trim() });
        records.PaperEditions.Single(e => e.Id == edition).State = to;
        return null;
    });

    /// <returns>Null when it is noted; otherwise why not.</returns>
    public string? Give(Guid edition, string holder) => Change(edition, (records, file) =>
    {
        if (string.IsNullOrWhiteSpace(holder))
        {
            return Say.It("Write who gets it: it may have to be called back.");
        }

        if (file.KeptBack is { } kept)
        {
            return kept;
        }

        int number = file.Copies.Length == 0 ? 1 : file.Copies[^1].Number + 1;
        records.PaperCopies.Add(new() { Id = IdOf(edition.ToString(), "copy", number.ToString(CultureInfo.InvariantCulture)), Edition = edition, Number = number, Holder = holder.Trim(), GivenAt = clock.GetUtcNow() });
        return null;
    });

    /// <summary>A copy has come back.</summary>
    public void Back(Guid copy, string? note)
    {
        lock (_one)
        {
            using RecordsContext records = data.Records();
            if (records.PaperCopies.FirstOrDefault(c => c.Id == copy && c.BackAt == null) is { } found)
            {
                found.BackAt = clock.GetUtcNow();
                found.BackNote = string.IsNullOrWhiteSpace(note) ? null : note.Trim();
                records.SaveChanges();
            }
        }
    }

    /// <summary>An edition as a pocket card, with the stamp of its state; null where there is no such edition.</summary>
    /// <param name="edition">Its id.</param>
    /// <param name="address">Where a phone finds a card by its name; null for nowhere.</param>
    public PaperDocument? Paper(Guid edition, Func<string, string?>? address)
    {
        if (All().FirstOrDefault(c => c.Editions.Any(e => e.Edition.Id == edition)) is not { } card)
        {
            return null;
        }

        EditionFile file = card.Editions.First(e => e.Edition.Id == edition);
        SourceText text = new(card.Text.Path, file.Edition.Text);
        text = file.IsTextChanged ? text : TranslatedCards.Of(BookOf(shelf.Now, card.Text), card.Text, Tongue.Spoken) ?? text;
        DateOnly day = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        CardStamp stamp = new(file.Edition.Tried.Split('\n', StringSplitOptions.RemoveEmptyEntries), Say.With($"{shelf.Book.Title}, edition {shelf.Book.Edition}, book {file.Edition.BookEdition}."), day, file.Events.LastOrDefault(e => e.State == PaperState.Approved)?.By)
        {
            History = file.History,
            Warning = file.Warning,
        };
        return CardReader.Read(text, BookOf(shelf.Now, card.Text), []) is { } read ? CardPaper.Of(read, stamp, shelf.Book, address?.Invoke(card.Name)) : null;
    }

    /// <summary>Titles of the cards that can be read, for as long as the same book is served.</summary>
    private ImmutableArray<(SourceText Text, string Title)> Titles(ServedBook book)
    {
        lock (_one)
        {
            if (_titles is not { } known || !ReferenceEquals(known.Of, book))
            {
                _titles = known = (book, [.. book.Book.CardTexts.Select(t => (t, CardReader.Read(t, BookOf(book, t), []))).Where(c => c.Item2 is { HasErrors: false }).Select(c => (c.t, c.Item2!.Title))]);
            }

            return known.Cards;
        }
    }

    private string? Change(Guid edition, Func<RecordsContext, EditionFile, string?> change)
    {
        lock (_one)
        {
            if (All().SelectMany(c => c.Editions).FirstOrDefault(e => e.Edition.Id == edition) is not { } file)
            {
                return Say.It("There is no such edition any more.");
            }

            using RecordsContext records = data.Records();
            string? refused = change(records, file);
            if (refused is null)
            {
                records.SaveChanges();
            }

            return refused;
        }
    }

    /// <summary>What goes into the records is in English, whoever asks.</summary>
    private (string Tried, bool Passed) Try(ServedBook book, SourceText text, CancellationToken stop)
    {
        using IDisposable english = Tongue.English.Speak();
        string name = Path.GetFileNameWithoutExtension(text.Path);
        SweepOptions options = new() { Cases = Cases, Seed = Seed };
        List<TrialResult> results = [];
        foreach (Situation situation in book.Situations.Where(s => s.Cards.Contains(name, StringComparer.Ordinal)))
        {
            if (Read(book, text) is { HasErrors: false } card && TrialPreparation.Prepare(book.Fleet, card, situation, []) is { } setup)
            {
                results.Add(new(setup, options, [.. CaseSweep.Run(setup, options, stop)]));
            }
        }

        bool passed = results.Any(r => r.Applicable > 0) && results.All(r => r.Failed == 0 && r.Undecided == 0 && !r.StoppedEarly);
        return (string.Join('\n', results.Select(TriedWords.Of)), passed);
    }

    private static Card? Read(ServedBook book, SourceText text) => CardReader.Read(text, BookOf(book, text), []);

    private static ClassBook BookOf(ServedBook book, SourceText text) => book.Book.TrainOf(text) is { } train ? book.BookOf(null, train) : book.Book;

    private static Guid IdOf(params string[] parts) => new(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', parts))).AsSpan(0, 16));
}
