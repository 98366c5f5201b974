using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;

namespace Sightglass.Training.Drills;

/// <summary>A drill on a plant, ready to run. Each margin is not negative while what it stands for is so.</summary>
/// <param name="Drill">As the book has it.</param>
/// <param name="Plan">Of the road number in use, in its train.</param>
/// <param name="Situation">Where it starts. In a drill whoever is asked answers: what is practised is not waiting.</param>
/// <param name="Person">Number of the trainee among the people of the situation.</param>
/// <param name="Cue">Null: the start.</param>
/// <param name="Known">What tells the cue, each with the places where it does.</param>
/// <param name="Objectives">In the book's order.</param>
/// <param name="Reports">In the book's order: when each is right.</param>
/// <param name="MustNever">In the book's order.</param>
/// <param name="Orders">In the book's order: what must have been so, and before what.</param>
/// <param name="Events">In the book's order.</param>
public sealed record BoundDrill(
    Drill Drill,
    Plan Plan,
    Situation Situation,
    int Person,
    Signal? Cue,
    ImmutableArray<KnownFrom> Known,
    ImmutableArray<Signal> Objectives,
    ImmutableArray<Signal> Reports,
    ImmutableArray<Signal> MustNever,
    ImmutableArray<(Signal First, Signal Then)> Orders,
    ImmutableArray<BoundEvent> Events)
{
    /// <summary>Points that can be had.</summary>
    public double MostPoints => Drill.Objectives.Sum(o => o.Worth);
}
