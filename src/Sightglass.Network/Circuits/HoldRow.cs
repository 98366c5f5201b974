namespace Sightglass.Network.Circuits;

/// <summary>A node whose potential is given.</summary>
/// <param name="Input">With its volts; −1 for 0 V.</param>
internal readonly record struct HoldRow(int Node, int Input);
