using System.Collections.Immutable;
using Sightglass.Book.Rules;
using Sightglass.Plant.Rules;

namespace Sightglass.Cli.Rules;

/// <summary>One set of rules held against a machine.</summary>
internal sealed record RuleSetResult(RuleSet Rules, ImmutableArray<RuleFinding> Findings)
{
    /// <summary>Rows that a machine keeps or not.</summary>
    public IEnumerable<RuleFinding> OfTheMachine => Findings.Where(f => f.Row.IsOfTheMachine);

    /// <summary>Rows about what people do.</summary>
    public IEnumerable<RuleFinding> OfPeople => Findings.Where(f => !f.Row.IsOfTheMachine);

    public int Count(RuleVerdict verdict) => OfTheMachine.Count(f => f.Verdict == verdict);

    /// <summary>The same with only the rows of a paragraph: the one so named, or all below it.</summary>
    public RuleSetResult Below(string paragraph) => this with { Findings = [.. Findings.Where(f => IsBelow(f.Row.Paragraph, paragraph))] };

    private static bool IsBelow(string row, string paragraph) =>
        row.StartsWith(paragraph, StringComparison.OrdinalIgnoreCase) && (row.Length == paragraph.Length || row[paragraph.Length] is '(' or ',' or '.');
}
