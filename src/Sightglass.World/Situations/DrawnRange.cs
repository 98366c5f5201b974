using Sightglass.Book.Model;

namespace Sightglass.World.Situations;

/// <summary>A value of a situation that differs from case to case.</summary>
/// <param name="Name">For people: <c>fill of aft compartment</c>, <c>leak, diameter</c>.</param>
/// <param name="Value">As written.</param>
/// <param name="Draw">The value of a case, from seed and case: SI, or the number of a position.</param>
public sealed record DrawnRange(string Name, StartValue Value, Func<ulong, ulong, double> Draw);
