using System.Collections.Immutable;

namespace Sightglass.Book.Model;

/// <summary>Who may operate a control, on whose permission, and who must be told.</summary>
public sealed record Authority(ImmutableArray<string> Who, string? Permission, ImmutableArray<string> Told);
