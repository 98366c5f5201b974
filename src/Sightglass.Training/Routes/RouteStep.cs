using System.Collections.Immutable;

namespace Sightglass.Training.Routes;

/// <summary>One place of a walk.</summary>
/// <param name="Place">Its number.</param>
/// <param name="Seconds">From the place before, at the ordinary pace; 0 at the start.</param>
/// <param name="Metres">From the place before.</param>
/// <param name="Shown">The things shown there, by number; none where it is only passed.</param>
public sealed record RouteStep(int Place, double Seconds, double Metres, ImmutableArray<int> Shown);
