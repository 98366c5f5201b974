using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tests;

/// <summary>The engine knows no name of the demo book: a copy with every name changed gives the same outcomes and hashes.</summary>
public sealed class RenamedBookTests
{
    private static readonly Lazy<(ClassBook Old, ClassBook New, Renamer Renamer)> s_books = new(ReadBoth);

    private static readonly Lazy<(Fleet Old, Fleet New)> s_fleets = new(() => (Compile(s_books.Value.Old), Compile(s_books.Value.New)));

    [Fact]
    public void Rename_EveryDeclaredName_Changes()
    {
        (ClassBook old, ClassBook renamed, _) = s_books.Value;
        Assert.Equal(Renamer.NamesOf(old).Count(), Renamer.NamesOf(renamed).Count());
        Assert.Empty(Renamer.NamesOf(old).Intersect(Renamer.NamesOf(renamed)));
    }

    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("empty-a-leaking-compartment-draft", "leaking compartment")]
    [InlineData("fuel-the-machine", "fuelling")]
    [InlineData("prime-a-starved-engine", "starving engine")]
    [InlineData("drain-water", "water in the fuel")]
    [InlineData("true-quantity", "gauges disagree")]
    [InlineData("reset-the-cut-off", "cut-off tripped")]
    [InlineData("before-a-steep-grade", "before the grade")]
    [InlineData("leak-with-the-engine-stopped", "leak with the engine stopped")]
    [InlineData("main-reservoir-leakage-test", "main reservoir may leak")]
    [InlineData("brake-pipe-leakage-test-draft", "brake pipe may leak")]
    [InlineData("cut-out-a-dragging-truck", "dragging brake")]
    [InlineData("release-the-parking-brake-by-hand", "parking brake does not release")]
    [InlineData("by-pass-the-dryer", "dryer at fault")]
    [InlineData("set-up-to-trail", "to be towed behind another unit")]
    [InlineData("reset-a-penalty", "penalty application")]
    [InlineData("standing-brake-test", "before a standing brake test")]
    [InlineData("loss-of-brake-pipe", "brake pipe hoses pulled apart")]
    [InlineData("haul-dead-in-tow", "dead behind another machine")]
    [InlineData("start-the-engine", "machine at rest")]
    [InlineData("find-a-ground", "a ground on the positive side")]
    [InlineData("axle-box-is-warm", "stopped for a warm axle box")]
    [InlineData("motors-run-warm", "motors warm at a stop")]
    [InlineData("test-the-cab-signals", "cab signals before departure")]
    [InlineData("self-load-test", "before a load test")]
    [InlineData("work-at-an-engine-that-starts-by-itself", "engine that keeps itself alive")]
    [InlineData("lights-before-departure", "before it leaves at dusk")]
    [InlineData("part-the-couplers", "machine about to leave its train")]
    public void Run_EveryNameChanged_SameOutcomesAndHashes(string card, string situation)
    {
        (ClassBook old, ClassBook renamed, Renamer renamer) = s_books.Value;
        Outcome[] before = Try(s_fleets.Value.Old, old, card, situation);
        Outcome[] after = Try(s_fleets.Value.New, renamed, renamer.Text(card), renamer.Text(situation));
        Assert.Equal(before.Select(o => o with { Mechanism = renamer.Text(o.Mechanism) }), after);
    }

    private static Fleet Compile(ClassBook book)
    {
        DiagnosticList found = [];
        Fleet? fleet = Fleet.Compile(book, found);
        Assert.True(fleet is not null, string.Join('\n', found));
        return fleet;
    }

    private static Outcome[] Try(Fleet fleet, ClassBook book, string cardFile, string situation)
    {
        DiagnosticList found = [];
        SourceText text = book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile);
        Card? card = CardReader.Read(text, book.For(text), found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        TrialSetup? setup = TrialPreparation.Prepare(fleet, card, book.Situations[situation], found);
        Assert.True(setup is not null, string.Join('\n', found));
        return CaseSweep.Run(setup, new() { Cases = 32, Threads = 1 });
    }

    private static (ClassBook, ClassBook, Renamer) ReadBoth()
    {
        string root = Path.Combine(Root(), "books", "curlew");
        SourceText[] yaml = Texts(root, "*.yaml");
        SourceText[] cards = Texts(root, "*.card");
        ClassBook old = Read(yaml, cards);
        Renamer renamer = new(old);
        return (old, Read([.. yaml.Select(t => t.Path == "silhouettes.yaml" ? t : renamer.Book(t))], [.. cards.Select(renamer.Card)]), renamer);
    }

    private static SourceText[] Texts(string root, string pattern) =>
    [
        .. Directory.EnumerateFiles(root, pattern, SearchOption.AllDirectories)
            .Where(f => !f.Contains("/words/", StringComparison.Ordinal)) // other languages are no part of the book
            .Select(f => new SourceText(Path.GetRelativePath(root, f).Replace('\\', '/'), File.ReadAllText(f)))
            .OrderBy(t => t.Path, StringComparer.Ordinal),
    ];

    private static ClassBook Read(SourceText[] yaml, SourceText[] cards)
    {
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(yaml, cards, KindLibrary.Catalog, found);
        Assert.True(book is not null, string.Join('\n', found.Take(40)));
        return book;
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
