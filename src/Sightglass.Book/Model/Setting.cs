using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A control and where it is to stand.</summary>
/// <param name="Item">Its name.</param>
/// <param name="Position">One of its positions.</param>
/// <param name="Span">Where the position is written.</param>
public sealed record Setting(string Item, string Position, Span Span);
