using Sightglass.World.Situations;

namespace Sightglass.Trials.Maps;

/// <summary>One thing that is drawn, and how much it matters.</summary>
/// <param name="Range">What is drawn: a range of the situation, or the road number.</param>
/// <param name="Share">Of whether a case fails, the share that it explains alone: 0…1.</param>
public sealed record RankedFactor(DrawnRange Range, double Share);
