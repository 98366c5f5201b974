using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What must not come about in a drill; it always is critical.</summary>
/// <param name="Name">As the sheet says it.</param>
/// <param name="Is">When it has come about.</param>
/// <param name="Because">Why, for the debrief.</param>
/// <param name="Span">Where it stands.</param>
public sealed record DrillNever(string Name, FormulaText Is, string Because, Span Span);
