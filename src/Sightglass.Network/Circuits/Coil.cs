namespace Sightglass.Network.Circuits;

/// <summary>A coil of a circuit that moves contacts.</summary>
/// <param name="Index">Among the coils, in the order in which they were added.</param>
/// <param name="Branch">Its winding.</param>
public readonly record struct Coil(int Index, Branch Branch);
