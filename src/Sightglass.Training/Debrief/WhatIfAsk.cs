using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.World.Runs;

namespace Sightglass.Training.Debrief;

/// <summary>From which moment a run goes another way, and which. With neither a card nor acts the trainee does nothing more.</summary>
/// <param name="From">Up to here the record is repeated exactly.</param>
/// <param name="Card">A program for each thing that the card's letter may stand for; empty for no card.</param>
/// <param name="Acts">What the trainee does, one after the other; empty for nothing.</param>
public sealed record WhatIfAsk(SimTime From, ImmutableArray<ProgramChoice> Card, ImmutableArray<WhatIfAct> Acts);
