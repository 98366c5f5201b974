namespace Sightglass.Plant.Feeders;

/// <summary>Where an item's two ends are in a feeder.</summary>
internal sealed record FeederEnds(FeederPart Part, Busbar From, Busbar To);
