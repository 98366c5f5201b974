using Sightglass.Network.Springs;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Gear;

/// <summary>A slot that running gear sets.</summary>
/// <param name="Value">What it comes to, from how everything stands.</param>
internal sealed record GearOutput(Slot Slot, Func<SuspensionState, double> Value);
