using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>How the rail is on a day.</summary>
/// <param name="Name">As people say it: <c>dry</c>, <c>leaves</c>.</param>
/// <param name="Span">Where it is written.</param>
/// <param name="Adhesion">Share of a weight that it holds, above 0 and at most 1.</param>
/// <param name="Sanded">The same with sand, not less.</param>
public sealed record RailCondition(string Name, Span Span, double Adhesion, double Sanded);
