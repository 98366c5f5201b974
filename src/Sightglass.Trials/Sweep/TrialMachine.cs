using System.Collections.Immutable;
using Sightglass.Plant.Plans;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>A machine on which a card is tried: of one road number, or of all that do not differ from each other.</summary>
/// <param name="Plan">Of the machine.</param>
/// <param name="Start">The situation, bound to that plan.</param>
/// <param name="Choices">A program for each thing the card's letter may stand for.</param>
public sealed record TrialMachine(Plan Plan, SituationStart Start, ImmutableArray<ProgramChoice> Choices);
