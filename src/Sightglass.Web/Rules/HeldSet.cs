using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Rules;
using Sightglass.Plant.Rules;

namespace Sightglass.Web.Rules;

/// <summary>A set of rules held against a machine, in the groups in which it is shown.</summary>
internal sealed record HeldSet(RuleSet Rules, ImmutableArray<RuleFinding> Findings, ImmutableArray<HeldGroup> Groups)
{
    public int Count(RuleVerdict verdict) => Findings.Count(f => f.Row.IsOfTheMachine && f.Verdict == verdict);

    /// <summary>What departs first; what nobody can tell last.</summary>
    public static HeldSet Of(RuleSet rules, ImmutableArray<RuleFinding> findings)
    {
        HeldGroup[] groups =
        [
            new(Say.It("Not kept"), [.. findings.Where(f => f.Verdict == RuleVerdict.NotKept)], true),
            new(Say.It("Kept"), [.. findings.Where(f => f.Verdict == RuleVerdict.Kept)], true),
            new(Say.It("Cannot be told from this book alone"), [.. findings.Where(f => f.Verdict == RuleVerdict.CannotBeTold && f.Row.IsOfTheMachine)], false),
            new(Say.It("No number that a book holds: people judge"), [.. findings.Where(f => !f.Row.IsOfTheMachine)], false),
        ];
        return new(rules, findings, [.. groups.Where(g => !g.Findings.IsEmpty)]);
    }
}
