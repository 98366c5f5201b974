using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Trials.Causes;
using Xunit;

namespace Sightglass.Trials.Tests.Causes;

/// <summary>A circuit of which everything that can go wrong is seen by eye. Expected causes: derived, by going through its parts.</summary>
public sealed class CauseTableTests
{
    private static readonly Lazy<CauseTable> s_table = new(Works.Table);

    [Fact]
    public void Make_OfARowOfContacts_HasAllThatOpensItAndNothingElse() => Assert.Equal(
        ["battery: open", "breaker stands off", "breaker: open", "contact: does not close", "relay: open coil", "switch stands off"],
        s_table.Value.Causes.Select(c => c.Words).Order(StringComparer.Ordinal));

    /// <summary>What shows the same whatever is wrong tells nothing and is left out.</summary>
    [Fact]
    public void Make_OfARowOfContacts_LooksAtWhatTells() =>
        Assert.Equal(["asked lamp", "breaker", "feed lamp", "switch"], s_table.Value.Looks.Select(l => l.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Make_WhereItDoesNotHoldByItself_SaysInHowManyCasesItDid()
    {
        DiagnosticList found = [];
        Assert.Null(CauseTable.Make(Works.Bind("it rests", found)!, 1, out int holds));
        Assert.Equal(0, holds);
        Assert.False(found.HasErrors);
    }

    [Fact]
    public void Bind_ToAFactThatIsNotThere_IsToldAtItsLine()
    {
        DiagnosticList found = [];
        Assert.Null(Works.Bind("it is lost", found));
        Diagnostic told = Assert.Single(found, d => d.Severity == Severity.Error);
        Assert.Equal(("W016", 26), (told.Code, told.Span.Line));
        Assert.False(string.IsNullOrEmpty(told.Fix));
    }

    /// <summary>A value within what is usual tells the usual, at both ends; a lamp that is lit while nothing is wrong is lower when it is dark.</summary>
    [Fact]
    public void Told_OfAValue_ComparesItWithTheUsual()
    {
        CauseTable table = s_table.Value;
        int lamp = Look("feed lamp");
        Assert.Equal([0, 0, -1], new[] { table.Told(lamp, table.Usual[lamp].Least), table.Told(lamp, table.Usual[lamp].Most), table.Told(lamp, 0) });
    }

    /// <summary>
    /// Before any look the shares are the likelihoods: 4 for each control, over its other positions, 1 for each part. After the feed lamp was seen lit only what lies behind it is left: 4 : 1 : 1. Source: Bayes' rule, by hand; what was never
    /// seen keeps a little.
    /// </summary>
    [Fact]
    public void Shares_AfterALook_AreAsBayesHasThem()
    {
        CauseTable table = s_table.Value;
        Belief belief = new(table);
        Assert.Equal(4.0 / 12, Share(belief, "switch stands off"), 12);
        Assert.Equal(4.0 / 12, Share(belief, "breaker stands off"), 12);
        Assert.Equal(1.0 / 12, Share(belief, "relay: open coil"), 12);
        belief.Take(Look("feed lamp"), 0);
        const double lit = 4.05, dark = 0.05, all = 6 * lit + 6 * dark; // seen in 4 of 4 cases, or in none, and 0.05 to each of the three outcomes
        Assert.Equal(4 * lit / all, Share(belief, "switch stands off"), 12);
        Assert.Equal(1 * lit / all, Share(belief, "relay: open coil"), 12);
        Assert.Equal(4 * dark / all, Share(belief, "breaker stands off"), 12);
        belief.Take(Look("switch"), 0);
        belief.Take(Look("asked lamp"), -1);
        Assert.Equal("contact: does not close", table.Causes[belief.Ranked()[0]].Words);
    }

    /// <summary>The switch is at hand and as likely as anything; then the lamps, thirteen metres off, and last what is left beside them. Source: bits over seconds by hand: the switch 0.92 bit in 2 s, the feed lamp 1 bit in 12 s.</summary>
    [Fact]
    public void Walk_WhileAllIsAsUsual_LooksAtHandFirst()
    {
        ImmutableArray<LookStep> walk = LookWalk.Of(s_table.Value, new(s_table.Value));
        Assert.Equal(("switch", "cab", 0.0), (walk[0].Look.Name, walk[0].Place, walk[0].Metres));
        Assert.Equal(4.0 / 12, walk[0].Share, 12);
        Assert.Equal(["switch stands off"], walk[0].Causes.Select(c => c.Words));
        Assert.Equal("room", walk[1].Place);
        Assert.Equal(13, walk[1].Metres, 6);
        Assert.All(walk.Skip(2), s => Assert.Equal(0, s.Metres));
    }

    /// <summary>Every cause shows by itself, or with one other that looks the same: an open battery and an open breaker, a contact and a coil.</summary>
    [Fact]
    public void Try_OneThingWrong_IsFoundFirstOrSecond()
    {
        CauseTrialResult result = CauseTrial.Run(s_table.Value, 200, 1);
        Assert.Equal((200, 1, 200), (result.Cases, result.AtOnce, result.Found));
        Assert.Empty(result.Missed);
        Assert.True(result.Metres <= 13.001, $"{result.Metres} m");
    }

    [Fact]
    public void Try_Twice_IsTheSame()
    {
        CauseTrialResult one = CauseTrial.Run(s_table.Value, 50, 3, faults: 2), other = CauseTrial.Run(s_table.Value, 50, 3, faults: 2);
        Assert.Equal((one.Found, one.NamedFirst, one.Looks, one.Metres), (other.Found, other.NamedFirst, other.Looks, other.Metres));
    }

    private static double Share(Belief belief, string cause) => belief.Shares()[s_table.Value.Causes.ToList().FindIndex(c => c.Words == cause)];

    private static int Look(string name) => s_table.Value.Looks.ToList().FindIndex(l => l.Name == name);
}
