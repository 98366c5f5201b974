using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Tree;
using Sightglass.Trials.Sweep;

namespace Sightglass.Cli.Tries;

/// <summary>One card to be tried in one situation.</summary>
internal sealed record TryRequest(TrialSetup Setup, Card Card, SourceText Text, SweepOptions Options, bool LeftOut);
