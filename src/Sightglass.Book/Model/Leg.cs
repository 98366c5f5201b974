using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A way between two places, with the time it takes at an ordinary pace.</summary>
public sealed record Leg(string From, string To, Span Span, double Seconds, string By);
