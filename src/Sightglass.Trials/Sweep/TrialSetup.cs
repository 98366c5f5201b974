using System.Collections.Immutable;
using Sightglass.Plant.Plans;
using Sightglass.World;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>What is tried: the programs of one card, from one situation, on one plan.</summary>
/// <param name="Plan">Of one road number.</param>
/// <param name="Start">The situation, bound to that plan.</param>
/// <param name="Choices">A program for each thing the card's letter may stand for.</param>
/// <param name="Times">How long people take.</param>
public sealed record TrialSetup(Plan Plan, SituationStart Start, ImmutableArray<ProgramChoice> Choices, HumanTimes Times)
{
    /// <summary>Error allowed in a step as a share of each store's span.</summary>
    public double RelativeTolerance { get; init; } = 1e-5;
}
