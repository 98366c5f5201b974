using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Trials;

namespace Sightglass.Cli.Books;

/// <summary>A book read with everything in it: the plant of each road number, situations and cards.</summary>
internal sealed class BookInspection
{
    private BookInspection(string folder) => Folder = folder;

    public string Folder { get; }

    public DiagnosticList Found { get; } = [];

    /// <summary>The plants of the class and of its road numbers.</summary>
    public Fleet Fleet { get; } = new();

    /// <summary>Null where the book has errors.</summary>
    public ClassBook? Book { get; private set; }

    /// <summary>Every card that could be read, also with errors.</summary>
    public ImmutableArray<Card> Cards { get; private set; } = [];

    /// <summary>Reads a book. The cards are read beside the plants of the road numbers: neither asks the other, and a cold start waits for both.</summary>
    /// <param name="folder">Its folder.</param>
    /// <param name="all">Whether cards and situations are read as well.</param>
    public static BookInspection Read(string folder, bool all = true)
    {
        BookInspection inspection = new(folder);
        Task<(ImmutableArray<Card> Cards, DiagnosticList Found)>? cards = null;
        inspection.Book = BookReader.Read(folder, KindLibrary.Catalog, inspection.Found,
        [
            (book, found) =>
            {
                cards ??= all && !inspection.Found.HasErrors ? Task.Run(() => ReadCards(book)) : null;
                if (all || book.TrainInUse is null)
                {
                    inspection.Fleet.Add(book, found); // a verb that runs something builds its own train when it asks for it
                }
            },
        ]);
        if (inspection.Book is { } read && cards is not null)
        {
            inspection.ReadSituations(read);
            inspection.Found.AddRange(cards.GetAwaiter().GetResult().Found);
            inspection.Cards = cards.Result.Cards;
        }

        return inspection;
    }

    private static (ImmutableArray<Card> Cards, DiagnosticList Found) ReadCards(ClassBook book)
    {
        DiagnosticList found = [];
        Dictionary<string, CardNames> byTrain = new(StringComparer.Ordinal);
        List<Card> cards = [];
        foreach (SourceText text in book.CardTexts)
        {
            string train = book.TrainOf(text) ?? "";
            if (!byTrain.TryGetValue(train, out CardNames? names))
            {
                byTrain[train] = names = new(train.Length == 0 ? book : book.Coupled(train), EnglishForms.Language);
            }

            if (CardReader.Read(text, names, found) is { } card)
            {
                cards.Add(card);
                CardLint.Check(card, names, found);
            }
        }

        return ([.. cards], found);
    }

    private void ReadSituations(ClassBook book)
    {
        if (!Found.HasErrors)
        {
            foreach (Situation situation in book.Situations.Values)
            {
                TrialPreparation.Check(Fleet, situation, Found);
            }
        }
    }
}
