using Sightglass.Basics.Formulas;

namespace Sightglass.Book.Rules;

/// <summary>How a number is measured on a running machine.</summary>
/// <param name="BeginsWhen">It begins at the moment at which this comes true, or at the start where it is true already.</param>
/// <param name="OnlyWhile">What must hold from its beginning to its end, or null; where it does not, the test is spoilt.</param>
/// <param name="Settles">Seconds between its beginning and the first value that counts.</param>
/// <param name="Lasts">Seconds from the first value that counts to the last.</param>
/// <param name="Outcome">What is made of the values.</param>
/// <param name="Of">What is followed.</param>
public sealed record RuleTest(Formula BeginsWhen, Formula? OnlyWhile, double Settles, double Lasts, RuleOutcome Outcome, Formula Of);
