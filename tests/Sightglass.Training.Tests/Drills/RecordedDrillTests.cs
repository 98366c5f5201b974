using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.Training.Drills;
using Sightglass.Trials;
using Sightglass.World.Runs;

namespace Sightglass.Training.Tests.Drills;

/// <summary>The first version of a drill from a recording, of every card that the machine alone is worked by: the book reads it and it binds.</summary>
public sealed class RecordedDrillTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-draft-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void File_OfEveryCard_ReadsAndBinds()
    {
        Copy(Books.FolderOf("curlew"));
        ClassBook book = Books.Curlew.Book;
        List<string> titles = [];
        foreach (SourceText text in book.CardTexts.Where(t => book.TrainOf(t) is null))
        {
            string name = Path.GetFileNameWithoutExtension(text.Path);
            Situation? like = book.Situations.Values.Where(s => s.Train is null && s.Cards.Contains(name)).OrderBy(s => s.Span).FirstOrDefault();
            if (CardReader.Read(text, book, []) is { HasErrors: false } card && TrialPreparation.Choices(Books.Curlew, card, []) is [{ Program: { DoneWhen: not null } program }, ..] && OnlyFacts(program.DoneWhen))
            {
                titles.Add($"draft {titles.Count}");
                StatesDraw states = RecordedRows.Check(book.Recordings["stopped on the grade"], "14:22:00", null, "10 s", [])!;
                NewFile draft = new RecordedDrill(titles[^1], states, name, program, like, book).File(_ => false);
                File.WriteAllText(Path.Combine(_folder, $"draft-{titles.Count}.yaml"), draft.Source.Text);
            }
        }

        Assert.True(titles.Count > 20, $"{titles.Count} cards");
        DiagnosticList found = [];
        Fleet fleet = new();
        ClassBook? read = BookReader.Read(_folder, KindLibrary.Catalog, found, [(b, notes) => Add(fleet, b, notes)]);
        Assert.True(read is not null, string.Join('\n', found));
        Assert.All(titles, t => Assert.Equal(["TO DECIDE: what is to be learned or shown, in one sentence."], [read.Drills[t].Aim]));
        foreach (string title in titles)
        {
            DrillBinder.Bind(fleet, read.Drills[title], found);
        }

        Assert.Empty(found);
    }

    /// <summary>What a card's letter stands for differs from case to case, and a drill has to say its objective for each: that is left to the author, and said.</summary>
    [Fact]
    public void File_OfACardWithALetter_SaysForWhichOneItsObjectivesAre()
    {
        ClassBook book = Books.Curlew.Book;
        SourceText text = book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == "empty-a-leaking-compartment");
        CardProgram program = TrialPreparation.Choices(Books.Curlew, CardReader.Read(text, book, [])!, [])[0].Program;
        string draft = new RecordedDrill("x", RecordedRows.Check(book.Recordings["stopped on the grade"], null, null, null, [])!, "empty-a-leaking-compartment", program, null, book).File(_ => false).Source.Text;
        Assert.Contains("# TO DECIDE: the card speaks of one of several; these objectives are for C = ", draft, StringComparison.Ordinal);
        Assert.Contains("    # TO DECIDE: who is there, and where.\n    people:\n      - role: mechanical\n        at:\n          - ", draft, StringComparison.Ordinal);
    }

    private static void Add(Fleet fleet, ClassBook book, DiagnosticList found)
    {
        if (book.TrainInUse is null)
        {
            fleet.Add(book, found);
        }
    }

    private static bool OnlyFacts(FactCondition condition) => condition switch
    {
        FactCondition.Holds => true,
        FactCondition.Not not => OnlyFacts(not.Inner),
        FactCondition.All all => all.Parts.All(OnlyFacts),
        FactCondition.Any any => any.Parts.All(OnlyFacts),
        _ => false,
    };

    private void Copy(string from)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(f => !f.Contains("/words/", StringComparison.Ordinal)))
        {
            string path = Path.Combine(_folder, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Copy(file, path);
        }
    }
}
