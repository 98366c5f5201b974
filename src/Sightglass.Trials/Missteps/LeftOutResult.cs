namespace Sightglass.Trials.Missteps;

/// <summary>What leaving one step out costs, or one line of its list.</summary>
/// <param name="Step">The step left out, by its number in the card.</param>
/// <param name="Line">The line of its list, from 1; 0 for the whole step.</param>
/// <param name="Text">As printed.</param>
/// <param name="Applicable">Cases run that the card is meant for.</param>
/// <param name="Bad">Of those, how many failed.</param>
/// <param name="Mechanism">What most of them failed of; empty where none did.</param>
/// <param name="Stops">Cases that were done with the step and stop, safely, without it.</param>
/// <param name="BadWithIt">How many fail of the whole card.</param>
public sealed record LeftOutResult(int Step, int Line, string Text, int Applicable, int Bad, string Mechanism, int Stops, int BadWithIt)
{
    /// <summary>Whether the step is needed: without it more cases fail, or cases that were done only stop.</summary>
    public bool Matters => Bad > BadWithIt || Stops > 0;
}
