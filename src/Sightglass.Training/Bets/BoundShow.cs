using Sightglass.Basics.Quantities;
using Sightglass.Plant.Signals;

namespace Sightglass.Training.Bets;

/// <summary>A quantity shown while a bet runs.</summary>
/// <param name="Unit">In which it is shown.</param>
/// <param name="Signal">SI.</param>
public sealed record BoundShow(string Name, Unit Unit, Signal Signal);
