using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Xunit;

namespace Sightglass.Trials.Tests;

/// <summary>The demo's fuelling card: questions that nobody answers are among its cases, and who forgets a protection has failed.</summary>
public sealed class ProtectionTrialTests
{
    private const int Cases = 48;

    /// <summary>One question in twenty (the demo's own, common practice): more than 12 of 48 would come once in a million (binomial).</summary>
    [Fact]
    public void Fuelling_AsWritten_IsDoneOrStopsUnanswered()
    {
        TrialResult result = Try(card => card);
        Assert.Equal(0, result.Failed);
        Assert.InRange(result.Stopped, 1, 12);
        Assert.Equal(Cases, result.Done + result.Stopped);
    }

    [Theory]
    [InlineData("Ask the engineer", "moved while fuelling, without protection")]
    [InlineData("Chock the wheels", "rolling while fuelling, without protection")]
    [InlineData("Give back protection", "protection was not given back: standing still")]
    public void Fuelling_WithoutTheStep_FailsOfIt(string step, string mechanism)
    {
        TrialResult result = Try(card => Misstep.LeaveOut(card, card.Steps.Single(s => s.Span.Text.Contains(step, StringComparison.Ordinal)).Number));
        Assert.Equal(mechanism, Assert.Single(result.Groups).Mechanism);
        Assert.True(result.Failed > Cases / 2, $"{result.Failed} failed");
    }

    private static TrialResult Try(Func<Card, Card> misstep)
    {
        ClassBook book = Books.Curlew.Book;
        DiagnosticList found = [];
        SourceText text = book.CardTexts.Single(t => Path.GetFileNameWithoutExtension(t.Path) == "fuel-the-machine");
        TrialSetup? setup = TrialPreparation.Prepare(Books.CurlewFleet, misstep(CardReader.Read(text, book, found)!), book.Situations["fuelling"], found);
        Assert.True(setup is not null, string.Join('\n', found));
        SweepOptions options = new() { Cases = Cases, Threads = 2 };
        return new(setup, options, [.. CaseSweep.Run(setup, options)]);
    }
}
