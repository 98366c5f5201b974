using System.Collections.Immutable;
using Sightglass.Trials.Causes;

namespace Sightglass.Cli.Output;

/// <summary>What <c>why</c> found, for a program.</summary>
internal sealed record WhyAnswer(string Search, string Wanted, string Situation, double WithinS, int PutWrong, int CanBe, ImmutableArray<WhyAnswer.Share> Likeliest, ImmutableArray<WhyAnswer.Step> Looks, WhyAnswer.Trial? Tried)
{
    /// <summary>Causes said at most.</summary>
    private const int Most = 8;

    public static WhyAnswer Of(CauseTable table, Belief belief, CauseTrialResult? tried)
    {
        double[] shares = belief.Shares();
        ImmutableArray<Share> likeliest = [.. belief.Ranked().Take(Most).Where(c => shares[c] > 0.005).Select(c => new Share(table.Causes[c].Words, shares[c]))];
        return new(table.Search.Search.Name, table.Search.Search.Wanted, table.Search.Situation.Name, table.Search.Within.Seconds, table.Tried, table.Causes.Length, likeliest,
            [.. LookWalk.Of(table, belief).Select(s => new Step(s.Look.Name, LookWords.Of(table, s.Number, 0), s.Place, s.Metres, s.Share, [.. s.Causes.Select(c => c.Words)]))],
            tried is null ? null : new(tried.Cases, tried.AtOnce, tried.NamedFirst, tried.Found, tried.Looks, tried.Metres, [.. tried.Missed.Select(m => string.Join(" and ", m.Select(c => c.Words))).Distinct().Order(StringComparer.Ordinal)]));
    }

    /// <summary>A cause and how likely it is, of all.</summary>
    internal sealed record Share(string Cause, double Likely);

    /// <summary>A look.</summary>
    internal sealed record Step(string Look, string Usual, string Place, double WayM, double Likely, ImmutableArray<string> Causes);

    /// <summary>What came out of trying.</summary>
    internal sealed record Trial(int Cases, int AtOnce, int NamedFirst, int Found, double Looks, double WayM, ImmutableArray<string> Missed);
}
