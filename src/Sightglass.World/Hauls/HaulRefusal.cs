namespace Sightglass.World.Hauls;

/// <summary>Why a run cannot be worked out.</summary>
/// <param name="Input">What was given wrong, by its name in <see cref="HaulInput"/>; null where the book lacks something.</param>
/// <param name="Sentence">In the language that is spoken.</param>
public sealed record HaulRefusal(HaulInput? Input, string Sentence);
