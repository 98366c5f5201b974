namespace Sightglass.Cards.Lint;

/// <summary>One rule for writing cards. It warns; nothing is edited. The rules and their sources stand in docs/cards.md.</summary>
internal abstract class LintRule(int number)
{
    /// <summary>Number of the rule, and of its code L0nn.</summary>
    public int Number { get; } = number;

    protected string Code { get; } = $"L{number:000}";

    public abstract void Check(LintContext card);
}
