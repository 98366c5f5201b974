using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.Trials;
using Sightglass.Trials.Sweep;
using Sightglass.Trials.Tries;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Tries;

/// <summary>A card named on the command line, made ready to be tried in its situations.</summary>
internal static class TryRequests
{
    /// <summary>One for each situation.</summary>
    /// <param name="inspection">The book.</param>
    /// <param name="cardName">A file, or a title in the book.</param>
    /// <param name="named">Situations; where there are none, those that are for the card.</param>
    /// <param name="only">The road number that is tried; null where each case draws one.</param>
    /// <param name="options">How many cases, which draws.</param>
    /// <param name="leftOut">Whether also with each step left out.</param>
    /// <param name="error">Is told what is wrong.</param>
    /// <param name="exit">Where the answer is null.</param>
    public static List<TryRequest>? Prepare(BookInspection inspection, string cardName, IReadOnlyList<string> named, string? only, SweepOptions options, bool leftOut, TextWriter error, out int exit)
    {
        exit = ExitCode.WrongUse;
        if (inspection.Book is not { } book || CardSource.Find(cardName, book, error) is not { } text)
        {
            Findings.Print(error, inspection.Folder, inspection.Found);
            exit = inspection.Book is null ? ExitCode.No : ExitCode.WrongUse;
            return null;
        }

        DiagnosticList found = [];
        string? train = CardSituations.TrainOf(book, text, named);
        ImmutableArray<World.Runs.ProgramChoice> choices = [];
        if (CardReader.Read(text, train is null ? book : book.Coupled(train), found) is { HasErrors: false } card)
        {
            choices = TrialPreparation.Choices(inspection.Fleet.MachineOf(null, train)!, card, found);
        }
        else
        {
            return Refuse(inspection, found, error, out exit);
        }

        if (found.HasErrors)
        {
            return Refuse(inspection, found, error, out exit);
        }

        if (SituationChoice.Choose(book, text, named, s => s.Train == train && CardSituations.Missing(choices, s) is null && AskedPeople.AreThere(choices, s), error) is not { } situations)
        {
            return null;
        }

        List<TryRequest> requests = [];
        foreach (Situation situation in situations)
        {
            if (CardSituations.Missing(choices, situation) is { } role)
            {
                error.WriteLine($"The card is for {role}, and in `{situation.Name}` there is none.");
                return null;
            }

            if (TrialPreparation.Prepare(inspection.Fleet, card, situation, found, only) is { } setup)
            {
                requests.Add(new(setup, card, text, options, leftOut) { OnlyNumber = only });
            }
        }

        if (found.HasErrors)
        {
            return Refuse(inspection, found, error, out exit);
        }

        if (requests.Count == 0)
        {
            error.WriteLine("The book has no situation in which somebody is who may work by this card.");
            return null;
        }

        return requests;
    }

    private static List<TryRequest>? Refuse(BookInspection inspection, DiagnosticList found, TextWriter error, out int exit)
    {
        Findings.Print(error, inspection.Folder == "." ? "" : inspection.Folder, found);
        exit = ExitCode.No;
        return null;
    }
}
