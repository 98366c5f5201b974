using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;

namespace Sightglass.Trials.Tries;

/// <summary>A group of failures with the case that is laid out for it.</summary>
/// <param name="Group">All of its cases.</param>
/// <param name="Least">The first of them, made as ordinary as can be.</param>
/// <param name="Story">That case, told.</param>
public sealed record FailureStory(FailureGroup Group, Counterexample Least, CaseStory Story);
