using System.Collections.Immutable;

namespace Sightglass.Trials.Causes;

/// <summary>One look on the way that is best while everything seen so far was as usual.</summary>
/// <param name="Number">Of the look, in the table.</param>
/// <param name="Look">What is looked at.</param>
/// <param name="Place">From where.</param>
/// <param name="Metres">From the place before.</param>
/// <param name="Causes">What it is, likeliest first, where it is not as usual.</param>
/// <param name="Share">How likely that is, of all.</param>
public sealed record LookStep(int Number, Look Look, string Place, double Metres, ImmutableArray<Cause> Causes, double Share);
