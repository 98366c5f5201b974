namespace Sightglass.Network.Circuits;

/// <summary>A branch as it was added: a conductance with what scales it, and an electromotive force that drives current from A to B.</summary>
/// <param name="Conductance">S, when whole.</param>
/// <param name="Opening">Input that it is multiplied by; −1 for none.</param>
/// <param name="Emf">Input with the force, V; −1 for none.</param>
/// <param name="Gate">Coil whose contact it is; −1 for none.</param>
/// <param name="ClosedWhenUp">Of a contact.</param>
/// <param name="Valve">Number of the diode that it is; −1 for none.</param>
internal readonly record struct BranchRow(string Name, int A, int B, double Conductance, int Opening = -1, int Emf = -1, int Gate = -1, bool ClosedWhenUp = false, int Valve = -1);
