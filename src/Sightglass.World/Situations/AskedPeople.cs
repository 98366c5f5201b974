using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.World.Runs;

namespace Sightglass.World.Situations;

/// <summary>Whether those are there in a situation whom a card asks to do something.</summary>
public static class AskedPeople
{
    /// <summary>Reports each sentence that asks a role of which nobody is there (W009), where it stands.</summary>
    public static void Check(ImmutableArray<ProgramChoice> choices, Situation situation, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(situation);
        ArgumentNullException.ThrowIfNull(found);
        foreach (CardOp.Request request in Missing(choices, situation).DistinctBy(r => r.Span))
        {
            found.Error(
                "W009", request.Span, $"`{request.Role.Name}` is asked to do something, and nobody is that in the situation `{situation.Name}`",
                $"add `- {{ role: {request.Role.Name}, at: [PLACE] }}` to its people, or take a situation with one");
        }
    }

    /// <summary>Whether nobody is missing.</summary>
    public static bool AreThere(ImmutableArray<ProgramChoice> choices, Situation situation) => !Missing(choices, situation).Any();

    private static IEnumerable<CardOp.Request> Missing(ImmutableArray<ProgramChoice> choices, Situation situation) =>
        (choices.IsDefault ? [] : choices).SelectMany(c => c.Program.Ops).OfType<CardOp.Request>().Where(r => situation.People.All(p => p.Role != r.Role.Name));
}
