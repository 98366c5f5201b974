using Sightglass.Basics.Diagnostics;
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

namespace Sightglass.Training.Tests.Drills;

public sealed class CaseDrillTests
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    /// <summary>Issue: a counterexample of a trial becomes a drill. The card that failed fails in it as it did; the mended one passes it; nobody does not; the book takes it.</summary>
    [Fact]
    public void Of_ACardThatFails_IsADrillThatTheMendedCardPasses()
    {
        CaseDrillDraft draft = Draft("empty-a-leaking-compartment-draft", "leaking compartment");
        Assert.Null(draft.Problem);
        Assert.True(draft.Fails);
        Assert.Equal(["empty-a-leaking-compartment"], draft.Drill.SolvedBy);
        Assert.Equal("Empty a leaking compartment.", draft.Drill.Aim);
        Assert.Equal("mechanical", draft.Drill.Role);
        Assert.Contains("engine starves", draft.Drill.MustNever.Select(n => n.Name));
        Assert.Equal("drills/leaking-compartment-as-a-trial-found-it.yaml", draft.File.Path);
        ClassBook book = Taken(draft);
        Assert.Equal("4112", Assert.Single(book.Situations[draft.Situation.Name].RoadNumbers));
        DiagnosticList found = [];
        Fleet fleet = Fleet.Compile(book, found)!;
        DrillVariants variants = new(fleet, book.Drills[draft.Drill.Name]);
        DrillCheckResult check = DrillCheck.Run(variants, DrillCards.Of(variants.For(new(3, 0), found)!, found)!.Value, 3, 3, found, shortcuts: false);
        Assert.Empty(found.Where(d => d.Severity == Severity.Error));
        Assert.True(check.IsGood);
    }

    /// <summary>A second one of the same situation gets another name and another file.</summary>
    [Fact]
    public void Of_ANameThatIsTaken_GetsAnother()
    {
        CaseDrillDraft draft = Draft("empty-a-leaking-compartment-draft", "leaking compartment", "leaking compartment, as a trial found it", "drills/leaking-compartment-as-a-trial-found-it-2.yaml");
        Assert.Equal("leaking compartment, as a trial found it (2)", draft.Drill.Name);
        Assert.Equal("drills/leaking-compartment-as-a-trial-found-it-2-2.yaml", draft.File.Path);
    }

    /// <summary>What the card is to bring about is so from the start: nothing would have to be done.</summary>
    [Fact]
    public void Of_ACaseThatNobodyHasToDoAnythingIn_IsNoDrill()
    {
        CaseDrillDraft draft = Draft("brake-pipe-leakage-test-draft", "brake pipe may leak");
        Assert.Contains("does nothing passes it too", draft.Problem, StringComparison.Ordinal);
        Assert.Empty(draft.Drill.SolvedBy);
    }

    private static CaseDrillDraft Draft(string name, string situation, params string[] taken)
    {
        DiagnosticList found = [];
        SourceText text = s_book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == name);
        Card card = CardReader.Read(text, s_book.For(text), found)!;
        TrialSetup setup = TrialPreparation.Prepare(Books.CurlewFleet, card, s_book.Situations[situation], found)!;
        TryResult result = Trier.Run(new(setup, card, text, new() { Cases = 64 }, LeftOut: false), TestContext.Current.CancellationToken);
        FailureStory failure = result.Failures[0];
        Plan plan = Books.CurlewFleet.MachineOf(failure.Story.Number, setup.Situation.Train)!;
        return CaseDrill.Of(plan, setup, card, failure.Least, taken.Contains, taken.Contains, TestContext.Current.CancellationToken);
    }

    private static ClassBook Taken(CaseDrillDraft draft)
    {
        string copy = Directory.CreateTempSubdirectory("sightglass-case-").FullName;
        try
        {
            string source = Books.FolderOf("curlew");
            foreach (string file in Directory.GetFiles(source, "*", SearchOption.AllDirectories).Where(f => Path.GetExtension(f) is ".yaml" or ".card"))
            {
                string to = Path.Combine(copy, Path.GetRelativePath(source, file));
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.Copy(file, to);
            }

            BookChanges changes = new(copy, KindLibrary.Catalog);
            Assert.Null(changes.AddFile(draft.File).Refused);
            Assert.NotNull(changes.AddFile(draft.File).Refused); // once is enough
            return changes.Read().Book!;
        }
        finally
        {
            Directory.Delete(copy, recursive: true);
        }
    }
}
