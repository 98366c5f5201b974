using System.Collections.Immutable;

namespace Sightglass.Trials.Causes;

/// <summary>What came out of putting things wrong and looking for them.</summary>
/// <param name="Cases">How many.</param>
/// <param name="AtOnce">Things put wrong in each.</param>
/// <param name="NamedFirst">Causes that were named before any other.</param>
/// <param name="Found">Cases in which every cause was named first or second.</param>
/// <param name="Looks">Looks made in a case, on average.</param>
/// <param name="Metres">Metres walked in a case, on average.</param>
/// <param name="Missed">What was wrong where it was not found.</param>
public sealed record CauseTrialResult(int Cases, int AtOnce, int NamedFirst, int Found, double Looks, double Metres, ImmutableArray<ImmutableArray<Cause>> Missed);
