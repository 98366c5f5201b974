namespace Sightglass.Trials.Causes;

/// <summary>One of the things that a look may show, in words.</summary>
/// <param name="Shows">−1, 0, 1 for lower than usual, as usual, higher.</param>
/// <param name="Words">As somebody answers: <c>lit</c>, <c>at run</c>, <c>88 to 92 psi</c>.</param>
public sealed record LookAnswer(int Shows, string Words);
