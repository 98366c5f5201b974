using Sightglass.Book.Rules;

namespace Sightglass.Plant.Rules;

/// <summary>A row held against a book or a run.</summary>
/// <param name="Value">What the book says or the run measured, SI; null where there is no number.</param>
/// <param name="AtLeast">The lower limit worked out for this machine, SI, or null.</param>
/// <param name="AtMost">The upper limit worked out for this machine, SI, or null.</param>
/// <param name="Why">Why nothing can be told, or how the number came about; empty where the row says all.</param>
public sealed record RuleFinding(RuleRow Row, RuleVerdict Verdict, double? Value, double? AtLeast, double? AtMost, string Why)
{
    internal static RuleFinding Untold(RuleRow row, string why) => new(row, RuleVerdict.CannotBeTold, null, null, null, why);
}
