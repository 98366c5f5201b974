using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.Trials;
using Sightglass.Trials.Sweep;
using Sightglass.Trials.Tries;
using Sightglass.Web.Live;

namespace Sightglass.Web.Trials;

/// <summary>Cards tried from a page, one trial at a time, and the drills that are made of what failed.</summary>
/// <param name="shelf">The book.</param>
public sealed class TrialDesk(BookShelf shelf) : IDisposable
{
    /// <summary>Trials that are kept to be looked at again.</summary>
    private const int Kept = 24;

    private const ulong Seed = 1;

    /// <summary>One thread: the other is for whoever works in the room or looks at a page.</summary>
    private const int Threads = 1;

    private readonly OneByOne _one = new();
    private readonly Lock _gate = new();
    private readonly List<(ServedBook Of, TrialWork Work)> _works = [];
    private readonly BookChanges _changes = new(shelf.Folder, KindLibrary.Catalog, () => [new Fleet().Add]);
    private (ServedBook Of, ImmutableArray<TrialCard> Cards)? _cards;

    /// <summary>Every card of the book that can be read, in the order of its files.</summary>
    public ImmutableArray<TrialCard> All()
    {
        ServedBook book = shelf.Now;
        lock (_gate)
        {
            if (_cards is not { } known || known.Of != book)
            {
                _cards = known = (book, [.. book.Book.CardTexts.Select(t => CardOf(book, t)).OfType<TrialCard>()]);
            }

            return known.Cards;
        }
    }

    /// <summary>The trial of a card that was asked for last, of the book as it was then; null where none was.</summary>
    public TrialWork? Last(string card)
    {
        lock (_gate)
        {
            return _works.FindLast(w => w.Work.Card == card).Work;
        }
    }

    /// <summary>Whether the book is served still that it was tried on.</summary>
    public bool IsOfNow(TrialWork work)
    {
        lock (_gate)
        {
            return _works.Exists(w => w.Work == work && w.Of == shelf.Now);
        }
    }

    /// <summary>Begins a trial, after those that are under way.</summary>
    /// <param name="card">The card.</param>
    /// <param name="situation">Of the book.</param>
    /// <param name="cases">1 to 4096.</param>
    public TrialWork Begin(TrialCard card, string situation, int cases)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentOutOfRangeException.ThrowIfLessThan(cases, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cases, 4096);
        ServedBook book = shelf.Now;
        TrialWork work = new(card.Name, situation, cases);
        lock (_gate)
        {
            if (_works.Count >= Kept && _works.FindIndex(w => w.Work.IsOver) is >= 0 and var old)
            {
                _works[old].Work.Dispose();
                _works.RemoveAt(old);
            }

            _works.Add((book, work));
        }

        _ = _one.Do(() => Run(book, card, work));
        return work;
    }

    /// <summary>Puts a drill of one of the failures that were laid out into the book.</summary>
    /// <param name="work">The trial.</param>
    /// <param name="failure">Its place among those that are laid out.</param>
    /// <returns>The drill, and why it is not in the book, or null where it is.</returns>
    public (CaseDrillDraft Draft, string? Refused) MakeDrill(TrialWork work, int failure)
    {
        ArgumentNullException.ThrowIfNull(work);
        TryResult result = work.Result ?? throw new InvalidOperationException("The trial is not over.");
        ServedBook tried = BookOf(work), now = shelf.Now;
        FailureStory story = result.Failures[failure];
        Plan plan = tried.Fleet.MachineOf(story.Story.Number, result.Request.Setup.Situation.Train)!;
        CaseDrillDraft draft = CaseDrill.Of(plan, result.Request.Setup, result.Request.Card, story.Least, n => now.Book.Situations.ContainsKey(n) || now.Book.Drills.ContainsKey(n), p => File.Exists(Path.Combine(shelf.Folder, p)));
        if (draft.Problem is { } problem)
        {
            return (draft, problem);
        }

        string? refused = _changes.AddFile(draft.File).Refused;
        if (refused is null)
        {
            shelf.Reread();
        }

        return (draft, refused);
    }

    public void Dispose()
    {
        lock (_gate)
        {
            _works.ForEach(w => w.Work.Stop());
        }

        _one.Dispose();
    }

    private ServedBook BookOf(TrialWork work)
    {
        lock (_gate)
        {
            return _works.Find(w => w.Work == work).Of ?? shelf.Now;
        }
    }

    private static TrialWork Run(ServedBook book, TrialCard card, TrialWork work)
    {
        try
        {
            DiagnosticList found = [];
            Situation situation = book.Book.Situations[work.Situation];
            ClassBook names = situation.Train is { } train ? book.BookOf(null, train) : book.Book;
            SweepOptions options = new() { Cases = work.Cases, Seed = Seed, Threads = Threads, Progress = work.Tell };
            TryResult? result = CardReader.Read(card.Text, names, found) is { HasErrors: false } read && TrialPreparation.Prepare(book.Fleet, read, situation, found) is { } setup
                ? Trier.Run(new(setup, read, card.Text, options, LeftOut: false), work.Stopped)
                : null;
            work.End(result, result is null ? [.. found.Where(d => d.Severity == Severity.Error).Select(d => d.ToString())] : []);
            return work;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            work.End(null, [Say.With($"It could not be tried: {e.Message}")]);
            throw;
        }
    }

    private static TrialCard? CardOf(ServedBook book, SourceText text)
    {
        ClassBook names = book.Book.TrainOf(text) is { } train ? book.BookOf(null, train) : book.Book;
        return CardReader.Read(text, names, []) is { HasErrors: false } card
            ? new(Path.GetFileNameWithoutExtension(text.Path), card.Title, text, [.. CardSituations.For(book.Book, text)])
            : null;
    }
}
