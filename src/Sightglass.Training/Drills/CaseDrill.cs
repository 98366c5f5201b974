using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Changes;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Training.Debrief;
using Sightglass.Trials;
using Sightglass.Trials.Results;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Training.Drills;

/// <summary>
/// Makes a drill of a case in which a card failed: the case as a situation of its own, what the card is to bring about as objectives, what it must never do, and the cards of
/// the book that pass it. It runs as it is; what it is for and what is asked afterwards its author may say better.
/// </summary>
public static class CaseDrill
{
    /// <summary>Digits of drawn numbers that are tried first, because they read well.</summary>
    private const int Few = 3;

    private const int All = 17;

    /// <summary>Cases in which a card has to pass it: what is drawn still is how soon people answer.</summary>
    private const int Cases = 4;

    /// <summary>Cards that are named as passing it.</summary>
    private const int MostSolving = 3;

    private const ulong Seed = 1;

    /// <param name="plan">The whole machine of the case, in the train of its situation.</param>
    /// <param name="setup">What was tried.</param>
    /// <param name="card">The card that failed, read against the names of the train.</param>
    /// <param name="least">The case, made as ordinary as can be.</param>
    /// <param name="isTaken">Whether the book has a situation or a drill of a name.</param>
    /// <param name="hasFile">Whether the book has a file of a path.</param>
    /// <param name="stop">Gives up looking for cards that pass it.</param>
    public static CaseDrillDraft Of(Plan plan, TrialSetup setup, Card card, Counterexample least, Func<string, bool> isTaken, Func<string, bool> hasFile, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(least);
        ArgumentNullException.ThrowIfNull(isTaken);
        CaseStory story = CaseStory.Tell(setup, least.Draws);
        string name = Enumerable.Range(1, int.MaxValue).Select(i => i == 1 ? $"{setup.Situation.Name}, as a trial found it" : $"{setup.Situation.Name}, as a trial found it ({i})")
            .First(n => !isTaken(n));
        (Situation situation, bool fails) = Settle(plan, setup, card, least, story.Number, name);
        Drill drill = Asked(plan.Book, situation, card, story, least);
        BoundDrill? bound = drill.Objectives.IsEmpty ? null : DrillBinder.Bind(plan, drill with { SolvedBy = ["none yet"] }, situation, []);
        bool isIdle = bound is not null && DrillTrial.Run(bound, new(Seed, 0), []).IsPassed;
        ImmutableArray<(WhatIfCard Card, double Seconds)> solving = bound is null || isIdle ? [] : Solving(bound, setup.Situation, stop);
        drill = drill with { Aim = $"{solving.Select(s => s.Card.Title).FirstOrDefault(card.Title).TrimEnd('.', ' ')}.", SolvedBy = [.. solving.Select(s => s.Card.Name)], TimeLimit = Limit(solving.Select(s => s.Seconds).Append(story.Outcome.Time.Seconds)) };
        NewFile file = new(
            NewFile.PathOf("drills", name, hasFile),
            [$"From a trial: the card “{card.Title}” failed here, in “{setup.Situation.Name}”: {least.Outcome.Mechanism}.", "It runs as it is. The aim, hints and what is observed or asked are its author's to say better."],
            [NewSituation.Of(situation), NewDrill.Of(drill)]);
        return new(drill, situation, file, fails, Problem(drill, isIdle));
    }

    private static string? Problem(Drill drill, bool isIdle) =>
        drill.Objectives.IsEmpty ? Say.It("the card asks for nothing that is a fact of the book, so there is nothing to be evaluated: write down what is to be so in the end")
        : isIdle ? Say.It("whoever does nothing passes it too, because what the card is to bring about is so from the start: write down what else is to be done or reported")
        : drill.SolvedBy.IsEmpty ? Say.It("no card of the book passes it yet, and a drill that nobody is known to pass is no drill: mend the card first, then make the drill")
        : null;

    /// <summary>The case as a situation, its numbers as short as they can be while the card fails in it.</summary>
    private static (Situation Situation, bool Fails) Settle(Plan plan, TrialSetup setup, Card card, Counterexample least, string? number, string name)
    {
        SituationStart start = setup.Machines[setup.IndexOf(least.Draws)].Start;
        Situation exact = start.Of(least.Draws, name, number, All);
        return new[] { start.Of(least.Draws, name, number, Few), exact }.FirstOrDefault(Fails) is { } failing ? (failing, true) : (exact, false);

        bool Fails(Situation situation)
        {
            if (TrialPreparation.Prepare(plan, card, situation, []) is not { } one)
            {
                return false;
            }

            Outcome end = CaseStory.End(one, new(Seed, 0));
            return end.Kind == OutcomeKind.Failed && end.Mechanism == least.Outcome.Mechanism;
        }
    }

    private static Drill Asked(ClassBook book, Situation situation, Card card, CaseStory story, Counterexample least)
    {
        CardProgram? program = story.Program;
        string departs = least.Departs.IsEmpty ? "nothing: it is the most ordinary case" : string.Join(", ", least.Departs.Select(d => $"{d.Name} {d.Value}"));
        return new(situation.Name, Span.None)
        {
            Aim = card.Title,
            Level = DrillLevel.Working,
            Situation = situation.Name,
            SituationSpan = Span.None,
            Role = program?.For.FirstOrDefault()?.Name ?? situation.People.FirstOrDefault()?.Role ?? "",
            RoleSpan = Span.None,
            StopWord = CardDemands.StopWordOf(book),
            Tools = program?.Needs ?? [],
            Objectives = CardDemands.Objectives(program),
            MustNever = CardDemands.MustNever(program),
            Asks = [new($"By the card this went wrong: {story.Outcome.Mechanism}. What of this machine brought it about?", $"Other than usual: {departs}.", Span.None)],
        };
    }

    /// <summary>Cards that pass it, each with the seconds it takes: those of the situation that was tried; others only where none of these does.</summary>
    private static ImmutableArray<(WhatIfCard Card, double Seconds)> Solving(BoundDrill bound, Situation tried, CancellationToken stop)
    {
        ILookup<bool, WhatIfCard> cards = WhatIfCard.Of(bound).ToLookup(c => tried.Cards.Contains(c.Name));
        return Passing(cards[true]) is { IsEmpty: false } own ? own : Passing(cards[false]);

        ImmutableArray<(WhatIfCard, double)> Passing(IEnumerable<WhatIfCard> some) =>
            [.. some.TakeWhile(_ => !stop.IsCancellationRequested).Select(c => (Card: c, Seconds: Longest(bound, c, stop))).Where(c => c.Seconds is not null).Select(c => (c.Card, c.Seconds!.Value)).Take(MostSolving)];
    }

    /// <summary>The longest that a card takes; null where it does not pass in every case.</summary>
    private static double? Longest(BoundDrill bound, WhatIfCard card, CancellationToken stop)
    {
        double longest = 0;
        for (ulong i = 0; i < Cases; i++)
        {
            if (stop.IsCancellationRequested || DrillTrial.Run(bound, new(Seed, i), card.Programs) is not { IsPassed: true } passed)
            {
                return null;
            }

            longest = Math.Max(longest, passed.Card!.Value.Time.Seconds);
        }

        return longest;
    }

    /// <summary>Half as long again as anybody took, in quarters of an hour.</summary>
    private static double Limit(IEnumerable<double> seconds) => Math.Max(1800, Math.Ceiling(1.5 * seconds.Max() / 900) * 900);
}
