using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;

namespace Sightglass.Cli.Reports;

/// <summary>A way in which a card fails, its most ordinary case and what happened in it.</summary>
internal sealed record ToldFailure(FailureGroup Group, Counterexample Least, CaseStory Story);
