using System.Collections.Immutable;
using Sightglass.Cards.Programs;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>One case run again for its story.</summary>
/// <param name="Outcome">The same as in the sweep.</param>
/// <param name="Number">The road number of its machine; null for a book without.</param>
/// <param name="Values">What else was drawn, in words.</param>
/// <param name="Journal">What happened.</param>
/// <param name="Program">What was worked by: the card with its letter settled; null where nothing was to be seen that would have settled it.</param>
public sealed record CaseStory(Outcome Outcome, string? Number, ImmutableArray<(string Name, string Value)> Values, ImmutableArray<JournalEntry> Journal, CardProgram? Program)
{
    /// <summary>Runs a case alone.</summary>
    public static CaseStory Tell(TrialSetup setup, CaseDraws draws)
    {
        ArgumentNullException.ThrowIfNull(setup);
        using LaneWorker worker = new(setup, draws);
        World.World world = worker.RunOne(draws, journal: true);
        return new(
            world.Run!.Outcome,
            setup.NumberOf(draws),
            [.. setup.Machines[0].Start.Ranges.Where(r => r.Varies).Select(r => (r.Name, r.Say(draws)))],
            [.. world.Journal!],
            world.Run.Program);
    }

    /// <summary>Only how a case ends, with some of its numbers held.</summary>
    public static Outcome End(TrialSetup setup, CaseDraws draws)
    {
        ArgumentNullException.ThrowIfNull(setup);
        using LaneWorker worker = new(setup, draws);
        return worker.RunOne(draws, journal: false).Run!.Outcome;
    }
}
