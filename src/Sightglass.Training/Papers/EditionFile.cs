using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Sightglass.Basics.Language;

namespace Sightglass.Training.Papers;

/// <summary>An edition of a card with all that became of it: who moved it when, and where its copies are.</summary>
/// <param name="Edition">The text and its trial.</param>
/// <param name="Number">Counted from 1 within its card.</param>
/// <param name="Events">Oldest first.</param>
/// <param name="Copies">By their numbers.</param>
public sealed record EditionFile(PaperEdition Edition, int Number, ImmutableArray<PaperEvent> Events, ImmutableArray<PaperCopy> Copies)
{
    /// <summary>Whether the card in the book has another text by now.</summary>
    public bool IsTextChanged { get; init; }

    /// <summary>The approved edition that took its place; null where there is none.</summary>
    public int? SupersededBy { get; init; }

    public PaperState State => Events.IsEmpty ? PaperState.Draft : Events[^1].State;

    /// <summary>Whether people may work by it today.</summary>
    public bool IsInForce => State == PaperState.Approved && SupersededBy is null;

    /// <summary>What keeps copies from being given, in a sentence; null where nothing does.</summary>
    public string? KeptBack =>
        State != PaperState.Approved ? Say.With($"It is {PaperMoves.Word(State)}: only an approved card is given to anybody.")
        : SupersededBy is { } newer ? Say.With($"Edition {newer} took its place: give that one.")
        : IsTextChanged ? Say.It("The card in the book has another text by now: make an edition of that.")
        : null;

    /// <summary>Copies that are out and should not be.</summary>
    public ImmutableArray<PaperCopy> ToRecall => State == PaperState.Withdrawn || SupersededBy is not null ? Out : [];

    /// <summary>Copies in somebody's hands.</summary>
    public ImmutableArray<PaperCopy> Out => [.. Copies.Where(c => c.BackAt is null)];

    /// <summary>Its way, one sentence for each step, with name and day.</summary>
    public ImmutableArray<string> History =>
    [
        Say.With($"Edition {Number}, written by {Edition.By}, {Day(Edition.MadeAt)}."),
        .. Events.Select(e => Done(e)),
        .. SupersededBy is { } newer ? [Say.With($"Edition {newer} took its place.")] : Array.Empty<string>(),
    ];

    /// <summary>What must stand large on it where nobody may work by it; null where it is in force.</summary>
    public string? Warning =>
        State == PaperState.Withdrawn ? Say.It("WITHDRAWN. Not to be worked by.")
        : SupersededBy is { } newer ? Say.With($"SUPERSEDED by edition {newer}. Not to be worked by.")
        : State == PaperState.Approved ? null
        : State == PaperState.Reviewed ? Say.It("REVIEWED, not approved. Not to be worked by.")
        : Say.It("DRAFT, approved by nobody. Not to be worked by.");

    /// <summary>The files of one card's editions, oldest first.</summary>
    /// <param name="editions">Of one card.</param>
    /// <param name="events">Of any.</param>
    /// <param name="copies">Of any.</param>
    /// <param name="textNow">The card's text in the book as it stands; null where the book has the card no more.</param>
    public static ImmutableArray<EditionFile> Of(IEnumerable<PaperEdition> editions, IEnumerable<PaperEvent> events, IEnumerable<PaperCopy> copies, string? textNow)
    {
        ILookup<Guid, PaperEvent> moved = events.ToLookup(e => e.Edition);
        ILookup<Guid, PaperCopy> given = copies.ToLookup(c => c.Edition);
        string? now = textNow is null ? null : HashOf(textNow);
        EditionFile[] files =
        [
            .. editions.OrderBy(e => e.MadeAt).ThenBy(e => e.Id).Select((e, i) => new EditionFile(e, i + 1, [.. moved[e.Id].OrderBy(m => m.At).ThenBy(m => m.Id)], [.. given[e.Id].OrderBy(c => c.Number)])
            {
                IsTextChanged = e.TextHash != now,
            }),
        ];
        return [.. files.Select(f => f with { SupersededBy = files.LastOrDefault(n => n.Number > f.Number && n.State == PaperState.Approved)?.Number })];
    }

    /// <summary>Of a card's text, as <see cref="PaperEdition.TextHash"/> keeps it.</summary>
    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static string Done(PaperEvent e)
    {
        string noted = string.IsNullOrWhiteSpace(e.Note) ? "" : $": {e.Note.TrimEnd('.')}";
        return e.State switch
        {
            PaperState.Draft => Say.With($"Sent back by {e.By}, {Day(e.At)}{noted}."),
            PaperState.Reviewed => Say.With($"Reviewed by {e.By}, {Day(e.At)}{noted}."),
            PaperState.Approved => Say.With($"Approved by {e.By}, {Day(e.At)}{noted}."),
            _ => Say.With($"Withdrawn by {e.By}, {Day(e.At)}{noted}."),
        };
    }

    private static string Day(DateTimeOffset at) => at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
