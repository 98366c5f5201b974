using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World;
using Sightglass.World.Records;

namespace Sightglass.Training.Bets;

/// <summary>A bet on a plant, ready to run.</summary>
/// <param name="Start">Where it begins; nothing is drawn.</param>
/// <param name="Acts">In the order of time.</param>
/// <param name="Answers">The margin of each answer's condition, true at 0 and above; null for the one that is left.</param>
/// <param name="Shows">What the wall shows.</param>
public sealed record BoundBet(Bet Bet, Plan Plan, SessionStart Start, ImmutableArray<(SimTime At, WorldAction Act)> Acts, ImmutableArray<Signal?> Answers, ImmutableArray<BoundShow> Shows)
{
    public SimTime End => SimTime.FromSeconds(Bet.RunsFor);
}
