using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Xunit;

namespace Sightglass.Trials.Tests;

/// <summary>A card that asks somebody to operate a control, in many cases.</summary>
public sealed class RequestTrialTests
{
    private const string Asks = """
        Card: By the engineer's hand
        For: mechanical
        Done when: the engine runs.

        1. Ask the engineer to turn the throttle to notch 3. Wait for the answer, at most 30 s. If not, stop: not in time.
        """;

    /// <summary>
    /// Answers come within 5 s to 60 s, alike, and one in twenty not at all (the demo's own). 6 s to ask, 2 s, 1 s, 6 s to answer: in time where it was heard
    /// within 15 s, 0.95 · 10/55 = 17 % of cases. Bounds wrong once in a million (exact binomial).
    /// </summary>
    [Fact]
    public void Try_AnswersOfTheSituation_AreInTimeAsOftenAsTheyShould()
    {
        TrialResult result = Try("idle, nothing wrong", 256);
        Assert.Equal(256, result.Done + result.Stopped);
        double share = 0.95 * 10 / 55;
        Assert.InRange(share, Basics.Statistics.BinomialBounds.Lower(result.Done, 256, 1 - 1e-6), Basics.Statistics.BinomialBounds.Upper(result.Done, 256, 1 - 1e-6));
    }

    [Fact]
    public void Prepare_NobodyToAsk_IsRefusedAtItsPlace()
    {
        Plan plan = Books.Load("curlew", null);
        Situation without = plan.Book.Situations["idle, nothing wrong"];
        without = without with { People = [.. without.People.Where(p => p.Role != "engineer")] };
        DiagnosticList found = [];
        Assert.Null(TrialPreparation.Prepare(plan, CardReader.Read(new("asks.card", Asks), plan.Book, [])!, without, found));
        Diagnostic one = Assert.Single(found);
        Assert.Equal(("W009", "asks.card", 5), (one.Code, one.Span.Path, one.Span.Line));
    }

    private static TrialResult Try(string situation, int cases)
    {
        Plan plan = Books.Load("curlew", null);
        DiagnosticList found = [];
        TrialSetup? setup = TrialPreparation.Prepare(plan, CardReader.Read(new("asks.card", Asks), plan.Book, found)!, plan.Book.Situations[situation], found);
        Assert.True(setup is not null && found.Count == 0, string.Join('\n', found));
        SweepOptions options = new() { Cases = cases, Threads = 1 };
        return new(setup, options, [.. CaseSweep.Run(setup, options)]);
    }
}
