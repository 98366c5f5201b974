using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Training.Drills;

/// <summary>The cards by which a drill is solved, in the names of its train.</summary>
public static class DrillCards
{
    /// <returns>In the book's order; null where one cannot be read or is for somebody else, with the reasons in <paramref name="found"/>.</returns>
    public static ImmutableArray<Card>? Of(BoundDrill drill, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(found);
        DiagnosticList notes = [];
        var cards = ImmutableArray.CreateBuilder<Card>();
        foreach (string name in drill.Drill.SolvedBy)
        {
            if (drill.Plan.Book.CardTexts.FirstOrDefault(t => Path.GetFileNameWithoutExtension(t.Path) == name) is not { } text
                || CardReader.Read(text, drill.Plan.Book, notes) is not { HasErrors: false } card)
            {
                continue;
            }

            ImmutableArray<ProgramChoice> choices = TrialPreparation.Choices(drill.Plan, card, notes);
            if (Stranger(drill, choices) is { } holder)
            {
                notes.Error("W030", drill.Drill.SolvedBySpan, $"the card `{name}` is for {holder}, and the trainee is {drill.Drill.Role}", "take a card for the trainee's role, or another role");
            }

            AskedPeople.Check(choices, drill.Situation, notes);
            cards.Add(card);
        }

        CheckTold(drill.Drill, drill.Plan, cards, notes);
        found.AddRange(notes);
        return notes.HasErrors ? null : cards.ToImmutable();
    }

    /// <summary>Whether each report that names sentences of cards names such as they tell: one that none tells would never be counted for who works by the card.</summary>
    /// <param name="drill">Of the book.</param>
    /// <param name="plan">Of its machine or train.</param>
    /// <param name="cards">That solve it, read in the plan's names.</param>
    /// <param name="found">Takes W031.</param>
    public static void CheckTold(Drill drill, Plan plan, IEnumerable<Card> cards, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(cards);
        ArgumentNullException.ThrowIfNull(found);
        if (drill.Reports.All(r => r.ToldAs.IsEmpty))
        {
            return;
        }

        string[] told = [.. cards.SelectMany(c => TrialPreparation.Choices(plan, c, [])).SelectMany(c => c.Program.Ops).Select(TextOf).OfType<string>().Distinct()];
        foreach ((DrillReport report, string text) in drill.Reports.SelectMany(r => r.ToldAs.Where(t => !told.Contains(t)).Select(t => (r, t))))
        {
            found.Error("W031", report.Span, $"no card that solves the drill tells `{text}`", Nearest.DidYouMean(text, told) ?? "write the sentence as it stands in the card");
        }
    }

    private static string? TextOf(CardOp op) => op switch
    {
        CardOp.Tell tell => tell.Text.Form,
        CardOp.Stop stop => stop.Text.Form,
        _ => null,
    };

    /// <summary>For whom a card is, where it is not for the trainee; else null.</summary>
    public static string? Stranger(BoundDrill drill, ImmutableArray<ProgramChoice> choices)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return choices.IsDefaultOrEmpty || choices[0].Program.For.IsEmpty || choices[0].Program.For.Any(r => r.Name == drill.Drill.Role)
            ? null
            : string.Join(", ", choices[0].Program.For.Select(r => r.Name));
    }
}
