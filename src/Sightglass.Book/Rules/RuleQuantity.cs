using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Rules;

/// <summary>Something that rows speak of and a book says what it is, under <c>measures</c>.</summary>
/// <param name="Unit">In which it is shown, and so what it measures; null for what is true or not.</param>
/// <param name="Text">What is meant, for whoever writes the measure.</param>
public sealed record RuleQuantity(string Name, Span Span, Unit? Unit, string Text);
