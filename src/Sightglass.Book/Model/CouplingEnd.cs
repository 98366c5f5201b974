using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>One end of the vehicle: which way it faces and what can be coupled there.</summary>
public sealed record CouplingEnd(string Name, Span Span, Side Faces, ImmutableArray<string> Items);
