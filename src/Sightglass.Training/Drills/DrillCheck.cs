using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Training.Drills;

/// <summary>
/// Shows whether a drill can be used: in every case at least one of its cards passes it, doing nothing passes it in none, and which of the steps that its cards have could be left out
/// without anybody noticing.
/// </summary>
public sealed class DrillCheck
{
    private readonly DrillVariants _variants;
    private readonly DiagnosticList _found;
    private readonly ulong _seed;
    private readonly int _cases;

    private DrillCheck(DrillVariants variants, ulong seed, int cases, DiagnosticList found) => (_variants, _seed, _cases, _found) = (variants, seed, cases, found);

    /// <param name="variants">The drill on its machines.</param>
    /// <param name="cards">The cards that it is to be solved by, read against the names of its situation's train.</param>
    /// <param name="seed">Of the draws.</param>
    /// <param name="cases">How many.</param>
    /// <param name="found">Takes what does not fit.</param>
    /// <param name="shortcuts">Whether steps are left out in turn.</param>
    /// <param name="stop">Ends it.</param>
    public static DrillCheckResult Run(DrillVariants variants, ImmutableArray<Card> cards, ulong seed, int cases, DiagnosticList found, bool shortcuts = true, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(variants);
        ArgumentNullException.ThrowIfNull(found);
        return new DrillCheck(variants, seed, cases, found).Run(cards, shortcuts, stop);
    }

    private DrillCheckResult Run(ImmutableArray<Card> cards, bool shortcuts, CancellationToken stop)
    {
        ImmutableArray<bool> idle = Passes(null, stop);
        ImmutableArray<(Card Card, ImmutableArray<bool> Passed)> solved = [.. cards.Select(c => (c, Passes(c, stop)))];
        ImmutableArray<int> unsolved = [.. Enumerable.Range(0, _cases).Where(i => !solved.Any(s => s.Passed[i]))];
        List<DrillShortcut> shorter = [];
        foreach ((Card card, ImmutableArray<bool> passed) in solved.Where(s => shortcuts && s.Passed.Contains(true)))
        {
            foreach ((int step, _, string text, Card left) in Misstep.Each(StepNumbers.Renumber(card)).Where(m => m.Line == 0))
            {
                if (!stop.IsCancellationRequested && Passes(left, stop) is var without && Enumerable.Range(0, _cases).All(i => without[i] || !passed[i]))
                {
                    shorter.Add(new(card.Title, step, text));
                }
            }
        }

        return new(_cases, [.. Enumerable.Range(0, _cases).Where(i => idle[i])], [.. solved.Select(s => new DrillSolution(s.Card.Title, s.Passed.Count(p => p)))], unsolved, [.. shorter]);
    }

    /// <summary>Of each case, whether the drill is passed; in none where the card cannot be read.</summary>
    private ImmutableArray<bool> Passes(Card? card, CancellationToken stop)
    {
        Dictionary<Plan, ImmutableArray<ProgramChoice>> programs = new(ReferenceEqualityComparer.Instance);
        var passed = ImmutableArray.CreateBuilder<bool>(_cases);
        for (int i = 0; i < _cases; i++)
        {
            CaseDraws draws = new(_seed, (ulong)i);
            passed.Add(!stop.IsCancellationRequested && _variants.For(draws, _found) is { } drill && Programs(drill.Plan) is { IsDefault: false } choices && DrillTrial.Run(drill, draws, choices).IsPassed);
        }

        return passed.MoveToImmutable();

        ImmutableArray<ProgramChoice> Programs(Plan plan)
        {
            if (card is null)
            {
                return [];
            }

            if (!programs.TryGetValue(plan, out ImmutableArray<ProgramChoice> choices))
            {
                choices = TrialPreparation.Choices(plan, card, []);
                programs[plan] = choices = choices.IsEmpty ? default : choices;
            }

            return choices;
        }
    }
}
