using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A formula as an author wrote it. It is read where it is bound to a plant, because a train has names of its own.</summary>
/// <param name="Text">Without its quotes.</param>
/// <param name="Span">Where it stands.</param>
public sealed record FormulaText(string Text, Span Span);
