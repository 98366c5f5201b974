using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Situations;

namespace Sightglass.Cli.Books;

/// <summary>A book read with everything in it: the plant of each road number, situations and cards.</summary>
internal sealed class BookInspection
{
    private readonly SortedDictionary<string, Plan> _plans = new(StringComparer.Ordinal);

    private BookInspection(string folder) => Folder = folder;

    public string Folder { get; }

    public DiagnosticList Found { get; } = [];

    /// <summary>Null where the book has errors.</summary>
    public ClassBook? Book { get; private set; }

    /// <summary>Every card that could be read, also with errors.</summary>
    public ImmutableArray<Card> Cards { get; private set; } = [];

    /// <summary>Reads a book.</summary>
    /// <param name="folder">Its folder.</param>
    /// <param name="all">Whether cards and situations are read as well.</param>
    public static BookInspection Read(string folder, bool all = true)
    {
        BookInspection inspection = new(folder);
        inspection.Book = BookReader.Read(folder, KindLibrary.Catalog, inspection.Found, [inspection.BuildPlant]);
        if (all && inspection.Book is { } book)
        {
            inspection.ReadSituations(book);
            inspection.Cards = [.. book.CardTexts.Select(t => CardReader.Read(t, book, inspection.Found)).OfType<Card>()];
            foreach (Card card in inspection.Cards)
            {
                CardLint.Check(card, book, inspection.Found);
            }
        }

        return inspection;
    }

    /// <summary>The plant for a road number of the book, or for none in particular.</summary>
    public Plan? PlanFor(string? roadNumber) => _plans.GetValueOrDefault(roadNumber ?? "");

    private void BuildPlant(ClassBook book, DiagnosticList found)
    {
        if (PlanCompiler.Compile(book, found) is { } plan)
        {
            _plans[book.RoadNumberInUse ?? ""] = plan;
        }
    }

    private void ReadSituations(ClassBook book)
    {
        foreach (Situation situation in book.Situations.Values)
        {
            if (PlanFor(situation.RoadNumber) is { } plan)
            {
                SituationStart.Bind(plan, situation, Found);
            }
        }
    }
}
