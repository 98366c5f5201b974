using System.Collections.Immutable;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Results;

/// <summary>A failing case made as ordinary as can be.</summary>
/// <param name="Draws">To run it again.</param>
/// <param name="Departs">What must differ from the ordinary for it to fail, in words.</param>
/// <param name="Outcome">How it ends.</param>
public sealed record Counterexample(CaseDraws Draws, ImmutableArray<(string Name, string Value)> Departs, Outcome Outcome);
