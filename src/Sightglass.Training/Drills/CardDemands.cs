using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.Training.Drills;

/// <summary>What a card asks, as a drill that is made from it asks it.</summary>
internal static class CardDemands
{
    /// <summary>What the card is done with, as far as it is made of facts, each by itself.</summary>
    public static ImmutableArray<DrillObjective> Objectives(CardProgram? program) =>
        [.. FactFormula.Parts(program?.DoneWhen).DistinctBy(f => f.Name).Select(f => new DrillObjective(f.Name, new(f.Formula, Span.None), Span.None) { Stays = program!.StaysSoSeconds })];

    /// <summary>What it must never bring about, as far as that is made of facts.</summary>
    public static ImmutableArray<DrillNever> MustNever(CardProgram? program) =>
        [.. (program?.MustNever ?? []).Select(FactFormula.Of).OfType<FactFormula>().DistinctBy(f => f.Name).Select(f => new DrillNever(f.Name, new(f.Formula, Span.None), "", Span.None))];

    /// <summary>What people of this book say who want everything to stop: what most of its drills have.</summary>
    public static string StopWordOf(ClassBook book) =>
        book.Drills.Values.Where(d => d.StopWord.Length > 0).GroupBy(d => d.StopWord).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault()?.Key ?? "Hold, hold, hold";
}
