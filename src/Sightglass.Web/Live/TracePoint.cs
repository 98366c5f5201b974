using System.Collections.Immutable;

namespace Sightglass.Web.Live;

/// <summary>All gauges at a moment, seconds since the start.</summary>
public sealed record TracePoint(double Seconds, ImmutableArray<GaugeLook> Gauges);
