using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.Training.Drills;

/// <summary>
/// The first version of a drill that starts from what was recorded, as a file that <c>check</c> accepts: who is there and what the recorder does not tell from a situation in which its card is
/// tried, what is asked from the card. What only an author can decide says so.
/// </summary>
/// <param name="Title">Of the drill.</param>
/// <param name="States">The stretch of a recording from which states are drawn.</param>
/// <param name="Card">The card that solves it, by its file.</param>
/// <param name="Program">Its program.</param>
/// <param name="Like">The situation that the rest is taken from; null where the book has none for the card.</param>
/// <param name="Book">Of all of them.</param>
public sealed record RecordedDrill(string Title, StatesDraw States, string Card, CardProgram Program, Situation? Like, ClassBook Book)
{
    private const string Open = "TO DECIDE";

    /// <summary>What the situation is to be called.</summary>
    public string SituationName => NameOf(Title);

    /// <summary>What the situation of a drill is to be called.</summary>
    public static string NameOf(string title) => $"{title}, as recorded";

    /// <summary>The situation that tells most of what a recorder does not: one of a drill that the card solves, else one in which it is tried; null where there is none.</summary>
    public static Situation? LikeFor(ClassBook book, Recording recording, string card)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(recording);
        ILookup<string, Drill> drills = book.Drills.Values.ToLookup(d => d.Situation);
        return book.Situations.Values.Where(s => s.Train == recording.Train && (s.Cards.Contains(card) || drills[s.Name].Any(d => d.SolvedBy.Contains(card))))
            .OrderByDescending(s => drills.Contains(s.Name)).ThenBy(s => s.Span).FirstOrDefault();
    }

    /// <summary>Where it starts.</summary>
    public Situation Situation => Rest with
    {
        Name = SituationName,
        Text = $"{Open}: what has happened, for a person to read.",
        Train = States.Of!.Train,
        Cards = [],
        Start = [.. Rest.Start.Where(s => !States.Of.Columns.Any(c => c.Sets.Contains(s.Name)))],
        States = States,
    };

    /// <summary>What it asks.</summary>
    public Drill Drill => new(Title, Span.None)
    {
        Aim = $"{Open}: what is to be learned or shown, in one sentence.",
        Situation = SituationName,
        SituationSpan = Span.None,
        Role = Program.For.FirstOrDefault()?.Name ?? Like?.People.FirstOrDefault()?.Role ?? "",
        RoleSpan = Span.None,
        TimeLimit = 7200,
        StopWord = CardDemands.StopWordOf(Book),
        Tools = Program.Needs,
        Objectives = CardDemands.Objectives(Program),
        MustNever = CardDemands.MustNever(Program),
        SolvedBy = [Card],
    };

    /// <summary>The file that brings the situation and the drill into the book.</summary>
    /// <param name="hasFile">Whether the book has a file of a path.</param>
    public NewFile File(Func<string, bool> hasFile) => new(
        NewFile.PathOf("drills", Title, hasFile),
        [$"A first version, made from the recording {States.Recording} and the card {Card}. What says {Open} is the author's; then `drill --check` tells whether it can be used."],
        [NewSituation.Of(Situation) with { Notes = [.. NotesOfStart()] }, NewDrill.Of(Drill) with { Notes = [.. NotesOfAsked()] }]);

    private Situation Rest => Like ?? new() { Name = SituationName, Span = Span.None, People = [.. People().Select(r => new PersonStart(r, [Book.PlacesInOrder[0].Name], Span.None))] };

    private IEnumerable<string> People() => Program.For.Concat(Program.Ops.Select(o => o.Person).OfType<Role>()).Select(r => r.Name).Distinct(StringComparer.Ordinal);

    private IEnumerable<(string Key, string Says)> NotesOfStart()
    {
        if (Like is { } like)
        {
            yield return ("people", $"{Open}: people, start and faults are those of the situation {like.Name}, without what the recording sets.");
        }
        else
        {
            yield return ("people", $"{Open}: who is there, and where.");
            yield return ("start", $"{Open}: what the recorder does not tell, each fixed or a range.");
            yield return ("faults", $"{Open}: which faults come.");
        }
    }

    private IEnumerable<(string Key, string Says)> NotesOfAsked()
    {
        yield return ("objectives", $"{Open}: what the trainee could know from (`cue`), hints, questions, and which objectives matter. These are what the card is done with.");
        if (!Program.Bindings.IsEmpty)
        {
            yield return ("objectives", $"{Open}: the card speaks of one of several; these objectives are for {string.Join(", ", Program.Bindings.Select(b => $"{b.Variable} = {b.Word}"))} alone. Say it for each, as `(not A leaks or ...) and (not B leaks or ...)`.");
        }
    }
}
