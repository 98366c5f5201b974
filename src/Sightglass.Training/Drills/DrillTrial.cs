using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Training.Evaluation;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Training.Drills;

/// <summary>Runs a drill without pages: a card is worked in the trainee's stead, or nobody does anything.</summary>
public static class DrillTrial
{
    /// <param name="drill">On the machine of the case.</param>
    /// <param name="draws">Which case.</param>
    /// <param name="card">A program for each thing that the card's letter may stand for; empty: nobody does anything.</param>
    /// <param name="tell">Whether the journal is kept.</param>
    /// <exception cref="InvalidOperationException">The situation does not fit the plan, which binding would have told.</exception>
    public static DrillResult Run(BoundDrill drill, CaseDraws draws, ImmutableArray<ProgramChoice> card, bool tell = false)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(draws);
        using LaneBank bank = new(drill.Plan);
        World.World world = new(bank, 0) { Journal = tell ? [] : null };
        DiagnosticList found = [];
        (SituationStart.Bind(drill.Plan, drill.Situation, found) ?? throw new InvalidOperationException(string.Join('\n', found))).Apply(world, draws);
        DrillRun run = new(drill);
        world.Follow(run);
        CardRun? worked = card.IsDefaultOrEmpty ? null : new(card) { RestAtEnd = false, WorkedBy = drill.Person };
        if (worked is not null)
        {
            world.Begin(worked);
        }

        world.RunTo(SimTime.FromSeconds(drill.Drill.TimeLimit + drill.Drill.Objectives.Select(o => o.Stays).DefaultIfEmpty().Max() + 1));
        DrillOutcome outcome = run.Outcome;
        world.CutHere();
        return new(outcome, Evaluator.Evaluate(drill, outcome), worked?.Outcome, [.. world.Journal ?? []], world.Trouble, world.Hash, world.Steps);
    }
}
