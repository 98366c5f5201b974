namespace Sightglass.Drawing.Diagram;

/// <summary>Two couplings whose hoses are joined crosswise: the first end of each to the second end of the other. Hidden truth.</summary>
/// <param name="Id">Name of the mistake in the book.</param>
/// <param name="One">Name of a coupling.</param>
/// <param name="Other">Name of the coupling whose hoses were taken for those of the first.</param>
public sealed record DiagramCrossing(string Id, string One, string Other);
