using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;
using Xunit;

namespace Sightglass.Trials.Tests;

public sealed class SweepTests(ITestOutputHelper output)
{
    /// <summary>On all machines of the demo, where each case draws its own; or on one.</summary>
    internal static TrialSetup Setup(string cardFile, string situation, string? roadNumber = null)
    {
        ClassBook book = Books.Curlew.Book;
        DiagnosticList found = new();
        SourceText text = book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == cardFile);
        Card? card = CardReader.Read(text, book.For(text), found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        TrialSetup? setup = TrialPreparation.Prepare(Books.CurlewFleet, card, book.Situations[situation], found, roadNumber);
        Assert.True(setup is not null, string.Join('\n', found));
        return setup;
    }

    [Theory]
    [InlineData("empty-a-leaking-compartment", "leaking compartment")]
    [InlineData("empty-a-leaking-compartment-draft", "leaking compartment")]
    public void Run_AnyOrderAndThreads_SameOutcomes(string card, string situation)
    {
        TrialSetup setup = Setup(card, situation);
        SweepOptions options = new() { Cases = 64, Threads = 1 };
        Outcome[] forwards = CaseSweep.Run(setup, options);
        TrialResult result = new(setup, options, [.. forwards]);
        output.WriteLine($"done {result.Done} stopped {result.Stopped} failed {result.Failed} n/a {result.NotApplicable} undecided {result.Undecided} bound {result.LowerBound}");
        CaseStory first = CaseStory.Tell(setup, new(1, 3));
        output.WriteLine(string.Join('\n', first.Values.Select(v => $"    {v.Name}: {v.Value}")));
        output.WriteLine(string.Join('\n', first.Journal.Select(j => $"  {j.Time.Seconds,8:0.0} {j.Step} {j.Text}")));
        foreach (FailureGroup group in result.Groups)
        {
            output.WriteLine($"{group.Cases.Length} × {group.Mechanism} at step {group.Step}, e.g. case {group.Cases[0]}");
            CaseStory story = CaseStory.Tell(setup, new(1, (ulong)group.Cases[0]));
            output.WriteLine(string.Join('\n', story.Values.Select(v => $"    {v.Name}: {v.Value}")));
            output.WriteLine(string.Join('\n', story.Journal.Select(j => $"  {j.Time.Seconds,8:0.0} {j.Step} {j.Text}")));
        }

        Assert.Equal(forwards, CaseSweep.Run(setup, options with { Threads = 2, Backwards = true }));
        Assert.Equal(forwards[17], CaseStory.End(setup, new(1, 17)));
    }
}
