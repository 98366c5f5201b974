namespace Sightglass.Trials.Missteps;

/// <summary>What leaving one step out costs.</summary>
/// <param name="Step">The step left out, by its number in the card.</param>
/// <param name="Text">As printed.</param>
/// <param name="Applicable">Cases run that the card is meant for.</param>
/// <param name="Bad">Of those, how many failed.</param>
/// <param name="Mechanism">What most of them failed of; empty where none did.</param>
public sealed record LeftOutResult(int Step, string Text, int Applicable, int Bad, string Mechanism);
