namespace Sightglass.Network.Phasors;

/// <summary>A terminal whose voltage is given.</summary>
/// <param name="Volts">Input with its magnitude; −1 for 0.</param>
/// <param name="Direction">That it is multiplied by.</param>
internal readonly record struct SourceRow(int Terminal, int Volts, Phasor Direction);
