using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Records;
using Sightglass.World.Runs;
using Sightglass.World.Situations;
using Sightglass.World.Snapshots;

namespace Sightglass.Cli.Runs;

/// <summary>What is to be run.</summary>
/// <param name="Plan">The machine.</param>
/// <param name="Start">Where it starts; null for the machine as built.</param>
/// <param name="Choices">The programs of a card, or none.</param>
/// <param name="Title">The card's, or null.</param>
/// <param name="Seed">With the case it settles every draw.</param>
/// <param name="Case">Which case.</param>
/// <param name="For">How long; null until the card has ended.</param>
/// <param name="Every">Between samples.</param>
/// <param name="Record">A session whose actions are done again, or null.</param>
/// <param name="From">Where a run that was broken off is taken up, or null.</param>
/// <param name="Saving">Where the run is kept as it goes, or null.</param>
internal sealed record RunRequest(
    Plan Plan, SituationStart? Start, ImmutableArray<ProgramChoice> Choices, string? Title, ulong Seed, ulong Case, SimTime? For, SimTime Every,
    SessionRecord? Record = null, WorldSnapshot? From = null, Saving? Saving = null)
{
    public string StartName => Start?.Situation.Name ?? "as built";
}
