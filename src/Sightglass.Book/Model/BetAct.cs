using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Something done while a bet runs.</summary>
/// <param name="After">Seconds from the start.</param>
/// <param name="Name">A control, or a quantity of the surroundings.</param>
/// <param name="To">The position, or the value as it was written.</param>
/// <param name="Value">SI; for a quantity of the surroundings.</param>
public sealed record BetAct(double After, string Name, string To, double Value, Span Span);
