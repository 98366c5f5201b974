using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Sweep;
using Sightglass.World;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials;

/// <summary>Makes a trial of a card and a situation.</summary>
public static class TrialPreparation
{
    /// <summary>The setup on every machine that a case may draw, or null with every reason in <paramref name="found"/>.</summary>
    /// <param name="fleet">The plans of the book, all without errors.</param>
    /// <param name="card">Read against the book.</param>
    /// <param name="situation">Of the book.</param>
    /// <param name="found">Takes what does not fit, each once; what shows on some of the road numbers only says on which.</param>
    /// <param name="roadNumber">The only one to be tried; null for those of the situation.</param>
    /// <param name="times">How long people take.</param>
    public static TrialSetup? Prepare(Fleet fleet, Card card, Situation situation, DiagnosticList found, string? roadNumber = null, HumanTimes? times = null)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        DrawnRange number = NumberOf(fleet, situation, roadNumber);
        FleetFindings findings = new(number.Words);
        ImmutableArray<TrialMachine?> machines = [.. Plans(fleet, number, situation).Select(p => Machine(p.Plan, card, situation, findings.On(p.Numbers)))];
        findings.AddTo(found);
        return machines.Contains(null) ? null : new(number, machines!, MachineOf(fleet, number, situation), times ?? new());
    }

    /// <summary>A trial on one machine alone.</summary>
    public static TrialSetup? Prepare(Plan plan, Card card, Situation situation, DiagnosticList found, HumanTimes? times = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<string> number = plan.Book.RoadNumberInUse is { } own ? [own] : [];
        return Machine(plan, card, situation, found) is { } machine ? new(RoadNumberDraw.RangeOf(number), [machine], [0], times ?? new()) : null;
    }

    /// <summary>The same trial of another card, in the same cases on the same machines; null with the reasons in <paramref name="found"/>.</summary>
    public static TrialSetup? Instead(TrialSetup setup, Card card, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ImmutableArray<TrialMachine?> machines = [.. setup.Machines.Select(m => Machine(m.Plan.Whole, card, setup.Situation, found))];
        return machines.Contains(null) ? null : setup with { Machines = machines! };
    }

    /// <summary>Binds a situation to every machine that a case may draw, to find what does not fit; in a train to the class's, where a road number's begins alike.</summary>
    public static void Check(Fleet fleet, Situation situation, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(fleet);
        DrawnRange number = RoadNumberDraw.RangeOf(fleet.Class!.Book, situation);
        FleetFindings findings = new(number.Words);
        foreach ((Plan plan, ImmutableArray<string> numbers) in Plans(fleet, number, situation, n => situation.Train is not null && fleet.BeginsAlike(n)))
        {
            SituationStart.Bind(plan, situation, findings.On(numbers));
        }

        findings.AddTo(found);
    }

    /// <summary>A program for each thing the card's letter may stand for; empty after errors.</summary>
    public static ImmutableArray<ProgramChoice> Choices(Plan plan, Card card, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<BindingCase> cases = CardCompiler.Bindings(card, plan.Book);
        if (cases.IsEmpty)
        {
            return CardCompiler.TryCompile(card, plan.Book, null, found) is { } only ? [new(null, only)] : [];
        }

        ImmutableArray<ProgramChoice>.Builder choices = ImmutableArray.CreateBuilder<ProgramChoice>();
        foreach (BindingCase one in cases)
        {
            if (CardCompiler.TryCompile(card, plan.Book, one.Word, found) is { } program)
            {
                choices.Add(new(one.When, program));
            }
        }

        return choices.Count == cases.Length ? choices.ToImmutable() : [];
    }

    private static TrialMachine? Machine(Plan plan, Card card, Situation situation, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(card);
        ImmutableArray<ProgramChoice> choices = Choices(plan, card, found);
        SituationStart? start = SituationStart.Bind(plan, situation, found);
        int before = found.Count;
        AskedPeople.Check(choices, situation, found);
        return choices.IsEmpty || start is null || found.Count > before ? null : OnlyAsked(plan, choices, situation);
    }

    /// <summary>Of the machine only what the card can tell: the systems it asks nothing about stand still.</summary>
    private static TrialMachine OnlyAsked(Plan plan, ImmutableArray<ProgramChoice> choices, Situation situation)
    {
        Plan only = plan.Only(AskedSignals.Of(plan, choices, situation), aside: true);
        return new(only, SituationStart.Bind(only, situation, [])!, choices);
    }

    private static DrawnRange NumberOf(Fleet fleet, Situation situation, string? only) =>
        only is null ? RoadNumberDraw.RangeOf(fleet.Class!.Book, situation) : RoadNumberDraw.RangeOf([only]);

    /// <summary>The machines of road numbers in the order of the first number of each; the class where there are none.</summary>
    /// <param name="asClass">For which numbers the class stands.</param>
    private static ImmutableArray<(Plan Plan, ImmutableArray<string> Numbers)> Plans(Fleet fleet, DrawnRange number, Situation situation, Func<string, bool>? asClass = null) => number.Words.IsEmpty
        ? [(fleet.MachineOf(null, situation.Train)!, [])]
        : [.. number.Words.GroupBy(n => fleet.MachineOf(asClass?.Invoke(n) == true ? null : n, situation.Train)!, ReferenceEqualityComparer.Instance).Select(g => ((Plan)g.Key!, g.ToImmutableArray()))];

    private static ImmutableArray<int> MachineOf(Fleet fleet, DrawnRange number, Situation situation)
    {
        ImmutableArray<(Plan Plan, ImmutableArray<string> Numbers)> plans = Plans(fleet, number, situation);
        return [.. number.Words.Select(n => Enumerable.Range(0, plans.Length).First(i => plans[i].Numbers.Contains(n)))];
    }
}
