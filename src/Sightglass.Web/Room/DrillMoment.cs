using System.Collections.Immutable;

namespace Sightglass.Web.Room;

/// <summary>The topics of a drill at a moment, SI, in their order.</summary>
/// <param name="Seconds">Since the start.</param>
public sealed record DrillMoment(double Seconds, ImmutableArray<double> Values);
