using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Help that a trainee may ask for.</summary>
/// <param name="Says">In one sentence.</param>
/// <param name="Costs">Points.</param>
/// <param name="Span">Where it stands.</param>
public sealed record DrillHint(string Says, double Costs, Span Span);
