using System.Collections.Immutable;

namespace Sightglass.Web.Live;

/// <summary>What stood along a line at one moment.</summary>
/// <param name="Seconds">Since the start.</param>
/// <param name="Pressures">Pascals above the atmosphere, from the head to the rear.</param>
public sealed record AlongPoint(double Seconds, ImmutableArray<double> Pressures);
