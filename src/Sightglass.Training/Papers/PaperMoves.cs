using Sightglass.Basics.Language;
namespace Sightglass.Training.Papers;

/// <summary>Who may move an edition to which state. Common practice, no source: somebody else than its author reads it, a named person stands for it, and nothing is approved that was not tried.</summary>
public static class PaperMoves
{
    /// <summary>States that may follow one, in the order in which they are offered.</summary>
    public static IReadOnlyList<PaperState> After(PaperState state) => state switch
    {
        PaperState.Draft => [PaperState.Reviewed, PaperState.Withdrawn],
        PaperState.Reviewed => [PaperState.Approved, PaperState.Draft, PaperState.Withdrawn],
        PaperState.Approved => [PaperState.Withdrawn],
        _ => [],
    };

    /// <summary>What keeps somebody from moving an edition, in a sentence; null where nothing does.</summary>
    /// <param name="edition">With what its trial came to.</param>
    /// <param name="state">Where it stands.</param>
    /// <param name="to">Where it shall go.</param>
    /// <param name="by">Who moves it.</param>
    /// <param name="note">Why: needed for sending back and withdrawing.</param>
    public static string? Hindrance(PaperEdition edition, PaperState state, PaperState to, string by, string? note)
    {
        ArgumentNullException.ThrowIfNull(edition);
        return !After(state).Contains(to) ? NoWay(state, to)
            : string.IsNullOrWhiteSpace(by) ? WhoIsMissing(to)
            : to == PaperState.Reviewed && Same(by, edition.By) ? Say.With($"{edition.By} wrote it: somebody else reviews it.")
            : to == PaperState.Approved && edition.Tried.Length == 0 ? Say.It("It was never tried: try the card, and make an edition of it.")
            : to == PaperState.Approved && !edition.Passed ? Say.It("It fails in its trial: what fails is not approved.")
            : to is PaperState.Withdrawn or PaperState.Draft && string.IsNullOrWhiteSpace(note) ? Say.It("Write why: whoever holds a copy will ask.")
            : null;
    }

    /// <summary>As it stands in a sentence.</summary>
    public static string Word(PaperState state) => state switch
    {
        PaperState.Draft => Say.It("a draft"),
        PaperState.Reviewed => Say.It("reviewed"),
        PaperState.Approved => Say.It("approved"),
        _ => Say.It("withdrawn"),
    };

    private static string NoWay(PaperState state, PaperState to) => After(state).Count == 0
        ? Say.With($"It is {Word(state)}: it cannot become {Word(to)}. Make a new edition.")
        : Say.With($"It is {Word(state)}: it cannot become {Word(to)}, only {string.Join(Say.It(" or "), After(state).Select(Word))}.");

    private static string WhoIsMissing(PaperState to) => to switch
    {
        PaperState.Draft => Say.It("Write who sends back it: a paper names them."),
        PaperState.Reviewed => Say.It("Write who reviewed it: a paper names them."),
        PaperState.Approved => Say.It("Write who approves it: a paper names them."),
        _ => Say.It("Write who withdraws it: a paper names them."),
    };

    private static bool Same(string a, string b) => string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);
}
