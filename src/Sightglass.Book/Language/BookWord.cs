using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Language;

/// <summary>One text of a book with what another language says for it. Both may have holes, <c>{name} compartment</c>, which stand for one of the other texts.</summary>
/// <param name="Text">As the book has it.</param>
/// <param name="Says">In the other language.</param>
/// <param name="Span">Where it is translated.</param>
public sealed record BookWord(string Text, string Says, Span Span);
