using System.Collections.Immutable;

namespace Sightglass.World.Situations;

/// <summary>A fault of one case: on one item, with its values drawn (SI).</summary>
public sealed record DrawnFault(string Item, string Fault, ImmutableSortedDictionary<string, double> Values);
