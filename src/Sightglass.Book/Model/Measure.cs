using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What a quantity that published rules speak of is on this machine, as a formula of the book's own names.</summary>
/// <param name="Name">As the rules call it, such as <c>main reservoir working pressure</c>.</param>
public sealed record Measure(string Name, Span Span, string Formula, Span FormulaSpan);
