using System.Collections.Immutable;

namespace Sightglass.Training.Drills;

/// <summary>What came of a drill: all that its evaluation is made from.</summary>
/// <param name="Notes">In the order of time.</param>
/// <param name="Held">Of each objective, whether it was so at the end.</param>
/// <param name="IsOver">The trainee has said that they are done, or the time is over.</param>
/// <param name="NotGivenBack">Protections that were asked for and are still held.</param>
public sealed record DrillOutcome(ImmutableArray<DrillNote> Notes, ImmutableArray<bool> Held, bool IsOver, ImmutableArray<string> NotGivenBack);
