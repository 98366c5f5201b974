using Sightglass.Network.Circuits;

namespace Sightglass.Plant.Circuits;

/// <summary>Where an item's two ends are in a circuit.</summary>
internal sealed record CircuitEnds(CircuitPart Part, Node From, Node To);
