using System.Collections.Immutable;

namespace Sightglass.Book.Model;

/// <summary>Which controls let the air brakes go and set them: pairs of a control and its position.</summary>
/// <param name="LetGo">All brakes off.</param>
/// <param name="Service">Full service.</param>
/// <param name="Emergency">Emergency.</param>
/// <param name="Planned">Share of what full service gives by which an ordinary stop is planned, above 0 and at most 1.</param>
public sealed record BrakeHandling(
    ImmutableSortedDictionary<string, string> LetGo, ImmutableSortedDictionary<string, string> Service, ImmutableSortedDictionary<string, string> Emergency, double Planned);
