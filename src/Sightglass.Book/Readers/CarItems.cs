using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>A class of cars and the names it uses.</summary>
internal sealed record CarItems(ClassBook Car, ImmutableArray<NameReference> References);
