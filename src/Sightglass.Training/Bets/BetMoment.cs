using System.Collections.Immutable;

namespace Sightglass.Training.Bets;

/// <summary>What was shown at one moment of a bet.</summary>
/// <param name="Seconds">From the start.</param>
/// <param name="Values">In the order of what is shown, in its units.</param>
public sealed record BetMoment(double Seconds, ImmutableArray<double> Values);
