using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>
/// A part of the plant that changes state by itself when a margin rises through zero: an engine that stops, a float that shuts.
/// </summary>
/// <param name="Name">For messages and the journal: <c>engine stops for want of fuel</c>.</param>
/// <param name="Network">Whose steps land on the crossing.</param>
/// <param name="Margin">Negative before, not negative when it fires.</param>
/// <param name="When">Armed only while this holds of the slots.</param>
/// <param name="Sets">The slot it sets.</param>
/// <param name="To">The value it sets.</param>
public sealed record SwitchRule(string Name, int Network, Signal Margin, SlotCondition When, Slot Sets, double To);

/// <summary>A pure condition on the slots.</summary>
public delegate bool SlotCondition(ReadOnlySpan<double> slots);
