using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Training.Bets;

namespace Sightglass.Training.Tests.Bets;

public sealed class BetTests
{
    private static readonly ClassBook s_book = Books.Curlew.Book;

    public static TheoryData<string> Names => [.. s_book.Bets.Keys];

    [Fact]
    public void Bets_OfTheDemo_AreTwelveForFuelAndAirAndSomeForCurrent()
    {
        Assert.True(s_book.Bets.Count >= 15);
        Assert.All(s_book.Bets.Values, b => Assert.True(b.Because.Length > 0 && b.Lesson.Length > 0 && b.Shows.Length > 0));
    }

    /// <summary>Each is decided by what is worked out: one answer comes true, and some other one could have.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Run_EachOfTheDemo_OneAnswerComesTrue(string name)
    {
        BetResult result = Run(s_book.Bets[name]);
        Assert.Null(result.Trouble);
        Assert.InRange(result.CameTrue, 0, s_book.Bets[name].Answers.Length - 1);
        Assert.True(result.Held[result.CameTrue]);
        Assert.DoesNotContain("omething else", s_book.Bets[name].Answers[result.CameTrue].Says, StringComparison.Ordinal);
    }

    /// <summary>Liquid in vessels that are joined stands at one level, and falls to the edge of a hole (Stevin's principle; any book of hydrostatics).</summary>
    [Fact]
    public void Run_HoleAtHalfHeight_AllThreeStandAtItsEdge()
    {
        Bet bet = s_book.Bets["hole at half height"] with
        {
            RunsFor = 48 * 3600,
            Shows = [.. new[] { "forward", "centre", "aft" }.Select(c => new BetShow($"level of {c} compartment", c, Span.None))],
        };
        BoundBet bound = Bind(bet);
        BetMoment end = BetRun.Run(bound).Moments[^1];
        Assert.All(end.Values.Select((v, i) => bound.Shows[i].Unit.ToSi(v)), level => Assert.Equal(0.300, level, 0.006)); // the last millimetres at a jet of 12 mm take days
        Assert.True(end.Values.Max() - end.Values.Min() < bound.Shows[0].Unit.FromSi(0.004));
    }

    /// <summary>What is lost is what is missing: volumes and what lies on the ground add up to what was there, but for what was burned.</summary>
    [Fact]
    public void Run_EngineStopped_NothingIsLostButOnTheGround()
    {
        BetResult result = Run(s_book.Bets["hole at half height"]);
        double First(BetMoment m) => m.Values[0] + m.Values[1] + m.Values[2] + m.Values[3];
        Assert.Equal(First(result.Moments[0]), First(result.Moments[^1]), First(result.Moments[0]) * 0.002); // pipes and filter hold a few litres
    }

    [Fact]
    public void Run_Twice_SameBits() => Assert.Equal(Run(s_book.Bets["one return open"]).Hash, Run(s_book.Bets["one return open"]).Hash);

    [Fact]
    public void Story_OfWhatRepeats_TellsItOnceWithItsCount()
    {
        BetResult result = Run(s_book.Bets["a hole in the first reservoir"]);
        var story = BetStory.Of(result.Journal);
        Assert.Equal(result.Journal.Length, story.Sum(s => s.Times));
        Assert.Equal(story.Length, story.Select(s => s.First.Text).Distinct().Count());
        Assert.Contains(story, s => s.Times > 20 && s.First.Text.Contains("governor", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("W010", "no situation `a night`")]
    [InlineData("W011", "draws `fill of forward compartment`")]
    [InlineData("W012", "`aft suply valve` cannot be set; did you mean `aft supply valve`?")]
    [InlineData("W013", "no position `shut`")]
    [InlineData("W014", "comes true whenever none before it does")]
    [InlineData("W015", "a condition cannot be drawn")]
    [InlineData("F007", "unknown name `volume of after compartment`")]
    public void Bind_WhatDoesNotFit_SaysWhatWouldBeRight(string code, string says)
    {
        Bet good = s_book.Bets["supply closed alone"];
        Bet wrong = code switch
        {
            "W010" => good with { Situation = "a night" },
            "W011" => good with { Situation = "leaking compartment" },
            "W012" => good with { Acts = [new(0, "aft suply valve", "closed", 0, Span.None)] },
            "W013" => good with { Acts = [new(0, "aft supply valve", "shut", 0, Span.None)] },
            "W014" => good with { Answers = [good.Answers[0] with { When = null }, good.Answers[1]] },
            "W015" => good with { Shows = [new("engine runs", "engine", Span.None)] },
            _ => good with { Shows = [new("volume of after compartment", "aft", new SourceText("bets.yaml", "volume of after compartment").Between(0, 27))] },
        };
        DiagnosticList found = [];
        Assert.Null(BetBinder.Bind(Books.CurlewFleet, wrong, found));
        Diagnostic first = found.First(d => d.Severity == Severity.Error);
        Assert.Equal(code, first.Code);
        Assert.Contains(says, first.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Surroundings are set in what the author wrote.</summary>
    [Fact]
    public void Bind_GradeSet_ActsAtItsMoment()
    {
        Bet bet = s_book.Bets["on the grade for the night"] with { Acts = [new(60, "grade", "-2 %", -0.02, Span.None)], RunsFor = 3600 };
        BetMoment end = BetRun.Run(Bind(bet)).Moments[^1];
        Assert.True(end.Values[0] > end.Values[2], "with its front downhill forward holds more than aft");
    }

    private static BoundBet Bind(Bet bet)
    {
        DiagnosticList found = [];
        return BetBinder.Bind(Books.CurlewFleet, bet, found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static BetResult Run(Bet bet) => BetRun.Run(Bind(bet));
}
