namespace Sightglass.Training.Drills;

/// <summary>An item within reach as it looks.</summary>
/// <param name="Name">In the book.</param>
/// <param name="Position">Of a control; null for what has none.</param>
/// <param name="Shows">SI, as an instrument shows it, rounded to its scale; null for what shows nothing.</param>
/// <param name="IsLit">Of a lamp; null for what is none.</param>
public sealed record SeenItem(string Name, string? Position, double? Shows, bool? IsLit);
