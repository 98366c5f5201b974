using Sightglass.Network.Compile;

namespace Sightglass.Plant.Plans;

/// <summary>
/// A number of a network that follows from the slots: an input (opening, demand) or a parameter (a tilted port's height).
/// A resolver in the sense of the design: pure, without memory, worked out at events in the order of building.
/// </summary>
/// <param name="Network">Which network.</param>
/// <param name="Input">The input it sets, when <paramref name="Parameter"/> is negative.</param>
/// <param name="Parameter">The parameter it sets, or −1.</param>
/// <param name="Value">From the slots.</param>
public sealed record Binding(int Network, Input Input, int Parameter, SlotFunction Value);

/// <summary>A pure function of the slots.</summary>
public delegate double SlotFunction(ReadOnlySpan<double> slots);
