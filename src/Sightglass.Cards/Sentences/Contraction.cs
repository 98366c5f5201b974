namespace Sightglass.Cards.Sentences;

/// <summary>Two words that are written as one where they meet.</summary>
/// <param name="Whole">As it is written.</param>
/// <param name="First">The word that comes first.</param>
/// <param name="Second">The word that comes second.</param>
public sealed record Contraction(string Whole, string First, string Second);
