namespace Sightglass.Network.Phasors;

/// <param name="From">Terminals where its wires begin.</param>
/// <param name="To">As many where they end.</param>
/// <param name="Impedance">Ω, one row after the other, on the side of <paramref name="To"/>.</param>
/// <param name="Ratio">Voltage of the first side over that of the second.</param>
/// <param name="Closed">Input for each wire; −1 for always.</param>
/// <param name="Heat">Input that resistance is multiplied by; −1 for none.</param>
internal readonly record struct LineRow(string Name, int[] From, int[] To, Phasor[] Impedance, double Ratio, int[] Closed, int Heat);
