using Sightglass.Cards.Sentences;
using Sightglass.World.Runs;

namespace Sightglass.World.Snapshots;

/// <summary>How far somebody has come with what they were asked to do.</summary>
public sealed record ErrandSnapshot(ErrandStage Stage, int Person, int Op, int Asker, int Question, Reply Reply);
