using Sightglass.Trials.Causes;

namespace Sightglass.Trials.Failures;

/// <summary>Something that can be seen and is otherwise than without the failure.</summary>
/// <param name="Look">What is looked at.</param>
/// <param name="Was">Without the failure: SI as read, the position's number, or 1 and 0.</param>
/// <param name="Is">With it.</param>
public sealed record FailureChange(Look Look, double Was, double Is)
{
    /// <summary><c>load lamp: dark instead of lit</c>.</summary>
    public string Words => LookWords.Changed(Look, Was, Is);
}
