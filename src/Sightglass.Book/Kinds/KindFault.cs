using System.Collections.Immutable;

namespace Sightglass.Book.Kinds;

/// <summary>A fault a kind can have.</summary>
/// <param name="Name">As written, such as <c>leak</c>, <c>stuck</c>, <c>bias</c>.</param>
/// <param name="Parameters">What to say with it: size, height, …</param>
public sealed record KindFault(string Name, string Doc, ImmutableArray<KindParameter> Parameters);
