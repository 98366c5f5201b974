namespace Sightglass.Training.Lessons;

/// <summary>A sentence of a narration.</summary>
/// <param name="Place">Of the stop at which it is said.</param>
/// <param name="Text">What is said.</param>
/// <param name="From">s since the narration began.</param>
/// <param name="To">When its last word is said.</param>
public sealed record SpokenLine(string Place, string Text, double From, double To);
