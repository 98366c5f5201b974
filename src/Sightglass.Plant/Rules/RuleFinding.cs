using Sightglass.Basics.Language;
using Sightglass.Book.Rules;

namespace Sightglass.Plant.Rules;

/// <summary>A row held against a book or a run.</summary>
/// <param name="Value">What the book says or the run measured, SI; null where there is no number.</param>
/// <param name="AtLeast">The lower limit worked out for this machine, SI, or null.</param>
/// <param name="AtMost">The upper limit worked out for this machine, SI, or null.</param>
/// <param name="Sentence">Why nothing can be told, or how the number came about, unsaid; empty where the row says all.</param>
public sealed record RuleFinding(RuleRow Row, RuleVerdict Verdict, double? Value, double? AtLeast, double? AtMost, FormattableString Sentence)
{
    /// <summary>The sentence in the language that is spoken.</summary>
    public string Why => Say.With(Sentence);

    internal static RuleFinding Untold(RuleRow row, FormattableString why) => new(row, RuleVerdict.CannotBeTold, null, null, null, why);
}
