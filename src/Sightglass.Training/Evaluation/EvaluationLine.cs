using Sightglass.Basics.Language;
using Sightglass.Basics.Time;

namespace Sightglass.Training.Evaluation;

/// <summary>One line of an evaluation, with what shows it.</summary>
/// <param name="Layer">What it is about.</param>
/// <param name="What">As the book or the rule says it, kept unsaid because sheets are read in several languages.</param>
/// <param name="IsMet">Whether it was met.</param>
/// <param name="IsCritical">Not met, the drill is not passed.</param>
/// <param name="Worth">Points that it gives when met; below zero for what is taken away.</param>
/// <param name="Evidence">What shows it, kept unsaid.</param>
/// <param name="At">The moment to look at, or null.</param>
/// <param name="Because">Why it matters, in the book's words; empty where nothing is said.</param>
public sealed record EvaluationLine(
    EvaluationLayer Layer, FormattableString What, bool IsMet, bool IsCritical, double Worth, FormattableString Evidence, SimTime? At = null, string Because = "")
{
    /// <summary>What it is, in the language that is spoken.</summary>
    public string Said => Say.Begin(Say.With(What));

    /// <summary>What shows it, in the language that is spoken.</summary>
    public string Shown => Say.Begin(Say.With(Evidence));
}
