using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

public sealed record PersonStart(string Role, ImmutableArray<string> Places, Span Span);
