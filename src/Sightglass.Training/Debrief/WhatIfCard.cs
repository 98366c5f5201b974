using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards;
using Sightglass.Training.Drills;
using Sightglass.Trials;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Training.Debrief;

/// <summary>A card of the book that the trainee of a drill might have worked by.</summary>
/// <param name="Name">Of its file, without the ending.</param>
/// <param name="Title">As it is written over it.</param>
/// <param name="Programs">One for each thing that its letter may stand for.</param>
/// <param name="Solves">Whether the drill says that it is solved by it.</param>
public sealed record WhatIfCard(string Name, string Title, ImmutableArray<ProgramChoice> Programs, bool Solves)
{
    /// <summary>Every card that is for the trainee's role and asks nobody who is not there; those that solve the drill first.</summary>
    public static ImmutableArray<WhatIfCard> Of(BoundDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        var cards = ImmutableArray.CreateBuilder<WhatIfCard>();
        foreach (var text in drill.Plan.Book.CardTexts)
        {
            DiagnosticList found = [];
            if (CardReader.Read(text, drill.Plan.Book, found) is not { HasErrors: false } card)
            {
                continue;
            }

            ImmutableArray<ProgramChoice> programs = TrialPreparation.Choices(drill.Plan, card, found);
            if (!programs.IsDefaultOrEmpty && !found.HasErrors && DrillCards.Stranger(drill, programs) is null && AskedPeople.AreThere(programs, drill.Situation))
            {
                string name = Path.GetFileNameWithoutExtension(text.Path);
                cards.Add(new(name, card.Title, programs, drill.Drill.SolvedBy.Contains(name)));
            }
        }

        return [.. cards.OrderByDescending(c => c.Solves).ThenBy(c => c.Title, StringComparer.Ordinal)];
    }
}
