using System.Collections.Immutable;

namespace Sightglass.Training.Lessons;

/// <summary>Stops that one person speaks at.</summary>
/// <param name="Stops">One after the other on the route.</param>
/// <param name="Seconds">One group there, walking between its stops included.</param>
public sealed record LessonStation(ImmutableArray<LessonStop> Stops, double Seconds);
