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
    /// <summary>The setup, or null with every reason in <paramref name="found"/>.</summary>
    public static TrialSetup? Prepare(Plan plan, Card card, Situation situation, DiagnosticList found, HumanTimes? times = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(card);
        ImmutableArray<ProgramChoice> choices = Choices(plan, card, found);
        SituationStart? start = SituationStart.Bind(plan, situation, found);
        int before = found.Count;
        AskedPeople.Check(choices, situation, found);
        return choices.IsEmpty || start is null || found.Count > before ? null : new(plan, start, choices, times ?? new());
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
}
