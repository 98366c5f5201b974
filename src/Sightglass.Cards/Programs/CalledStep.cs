using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Programs;

/// <summary>Where an operation stands that comes from a card called by this one.</summary>
/// <param name="Title">Of the card it is printed on.</param>
/// <param name="Step">Its number there.</param>
/// <param name="Depth">1 for a card called by this one, 2 for one called by that.</param>
/// <param name="At">The sentence of this card that calls.</param>
public sealed record CalledStep(string Title, int Step, int Depth, Span At);
