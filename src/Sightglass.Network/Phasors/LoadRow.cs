namespace Sightglass.Network.Phasors;

/// <param name="To">−1 for the frame.</param>
/// <param name="Volts">At which it draws what is told.</param>
/// <param name="Floor">Share of them below which it counts as an impedance.</param>
/// <param name="Active">Input with its W.</param>
/// <param name="Reactive">Input with its var; −1 for none.</param>
internal readonly record struct LoadRow(string Name, int From, int To, LoadKind Kind, double Volts, double Floor, int Active, int Reactive);
