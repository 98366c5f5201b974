using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Language;

/// <summary>A text of a book that people read.</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Text">As the author wrote it, holes filled.</param>
/// <param name="Span">Where it, or that to which it belongs, stands.</param>
public readonly record struct ReadText(BookTextSort Sort, string Text, Span Span);
