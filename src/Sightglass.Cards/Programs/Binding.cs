namespace Sightglass.Cards.Programs;

/// <summary>What a card's letter stands for in this run: <c>C</c> is <c>aft</c>.</summary>
public sealed record Binding(string Variable, string Word);
