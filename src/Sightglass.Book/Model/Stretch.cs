using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A stretch of a route along which nothing changes.</summary>
/// <param name="Span">Where it is written.</param>
/// <param name="From">Milepost, m.</param>
/// <param name="To">Milepost, m, greater.</param>
/// <param name="Grade">Rise over run, above 0 uphill.</param>
/// <param name="CurveDegrees">By 100 ft of arc, 0 or more.</param>
/// <param name="Limit">m/s, above 0.</param>
/// <param name="Holds">Share of the rail's adhesion that it has, 0…1: less under trees or in a tunnel.</param>
public sealed record Stretch(Span Span, double From, double To, double Grade, double CurveDegrees, double Limit, double Holds);
