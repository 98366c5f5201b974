using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What must have been so before something else comes about for the first time; it always is critical.</summary>
/// <param name="Name">As the sheet says it: <c>proved dead before a plug is pulled</c>.</param>
/// <param name="First">Must have been so, if only for a moment.</param>
/// <param name="Then">Before this; where it never comes about, nothing is judged.</param>
/// <param name="Because">Why, for the debrief.</param>
/// <param name="Span">Where it stands.</param>
public sealed record DrillOrder(string Name, FormulaText First, FormulaText Then, string Because, Span Span);
