using Sightglass.Plant.Signals;

namespace Sightglass.Plant.Plans;

/// <summary>What must hold for a control to be moved by hand.</summary>
/// <param name="Margin">Not negative while it is free.</param>
/// <param name="While">The condition, as the book says it.</param>
/// <param name="Into">The position, by its index, into which alone it is held; null for any: an engine that only its starter sets running may be stopped by hand.</param>
public sealed record Hold(Signal Margin, string While, int? Into = null);
