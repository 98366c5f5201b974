using System.Collections.Immutable;
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
using Sightglass.World.Situations;

namespace Sightglass.Trials.Tests;

/// <summary>A trial steps what its card asks about and nothing else: another system in the book neither costs it anything nor changes a bit of it.</summary>
public sealed class LeftOutNetworkTests
{
    private const int Cases = 16;

    private static readonly Lazy<ClassBook> s_alone = new(() => Read(""));
    private static readonly Lazy<ClassBook> s_both = new(() => Read(TrainText.Items(2, "trial air", "fuel panel, right", "engineer")));

    private static readonly SweepOptions s_options = new() { Cases = Cases, Threads = 1 };

    /// <summary>With air in the book, and without: the same to the last bit.</summary>
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("fuel-the-machine", "fuelling")]
    [InlineData("prime-a-starved-engine", "starving engine")]
    public void Run_AnotherSystemInTheBook_SameOutcomesAndHashes(string card, string situation)
    {
        TrialSetup both = Setup(s_both.Value, card, situation);
        Assert.All(both.Machines, m => Assert.Contains("trial air", m.Plan.LeftOut));
        Assert.Equal(CaseSweep.Run(Setup(s_alone.Value, card, situation), s_options), CaseSweep.Run(both, s_options));
    }

    /// <summary>Stepped or left out: it ends in the same way at the same step. Where the air changes something the steps of the fuel are cut elsewhere, and moments differ by what a step may err.</summary>
    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("fuel-the-machine", "fuelling")]
    public void Run_AirSteppedOrLeftOut_SameOutcomes(string card, string situation)
    {
        TrialSetup only = Setup(s_both.Value, card, situation);
        TrialSetup whole = only with
        {
            Machines = [.. only.Machines.Select(m => m with { Plan = m.Plan.Whole, Start = SituationStart.Bind(m.Plan.Whole, only.Situation, [])! })],
        };
        Assert.All(whole.Machines, m => Assert.Empty(m.Plan.LeftOut));
        foreach ((Outcome a, Outcome b) in CaseSweep.Run(only, s_options).Zip(CaseSweep.Run(whole, s_options)))
        {
            Assert.Equal((a.Kind, a.Mechanism, a.Step), (b.Kind, b.Mechanism, b.Step));
            Assert.Equal(a.Time.Seconds, b.Time.Seconds, 1.0);
        }
    }

    private static TrialSetup Setup(ClassBook book, string cardFile, string situation)
    {
        DiagnosticList found = [];
        Fleet? fleet = Fleet.Compile(book, found);
        Assert.True(fleet is not null, string.Join('\n', found));
        Card card = CardReader.Read(book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile), book, found)!;
        TrialSetup? setup = TrialPreparation.Prepare(fleet, card, book.Situations[situation], found);
        Assert.True(setup is not null, string.Join('\n', found));
        return setup;
    }

    private static ClassBook Read(string air)
    {
        string root = Path.Combine(Root(), "books", "curlew");
        ImmutableArray<SourceText> own = [.. Texts(root, "*.yaml")];
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(
            air.Length == 0 ? own : [.. own, new SourceText("zz-air.yaml", "systems: { trial air: { medium: brake, alive: yes } }\n" + air)], [.. Texts(root, "*.card")], KindLibrary.Catalog, found);
        Assert.True(book is not null, string.Join('\n', found.Take(40)));
        return book;
    }

    private static IEnumerable<SourceText> Texts(string root, string pattern) =>
        Directory.EnumerateFiles(root, pattern, SearchOption.AllDirectories)
            .Where(f => !f.Contains("/words/", StringComparison.Ordinal)) // other languages are no part of the book
            .Select(f => new SourceText(Path.GetRelativePath(root, f).Replace('\\', '/'), File.ReadAllText(f)))
            .OrderBy(t => t.Path, StringComparer.Ordinal);

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
