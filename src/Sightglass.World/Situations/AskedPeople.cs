using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.World.Runs;

namespace Sightglass.World.Situations;

/// <summary>Whether those are there in a situation whom a card asks to do something, or gives steps of their own.</summary>
public static class AskedPeople
{
    /// <summary>Reports each sentence that is for a role of which nobody is there (W009), where it stands.</summary>
    public static void Check(ImmutableArray<ProgramChoice> choices, Situation situation, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(situation);
        ArgumentNullException.ThrowIfNull(found);
        foreach ((Role role, Span span, bool isAsked) in Missing(choices, situation).DistinctBy(m => m.Span))
        {
            found.Error(
                "W009", span, $"`{role.Name}` {(isAsked ? "is asked to do something" : "has this step")}, and nobody is that in the situation `{situation.Name}`",
                $"add `- {{ role: {role.Name}, at: [PLACE] }}` to its people, or take a situation with one");
        }
    }

    /// <summary>Whether nobody is missing.</summary>
    public static bool AreThere(ImmutableArray<ProgramChoice> choices, Situation situation) => !Missing(choices, situation).Any();

    private static IEnumerable<(Role Role, Span Span, bool IsAsked)> Missing(ImmutableArray<ProgramChoice> choices, Situation situation) =>
        (choices.IsDefault ? [] : choices).SelectMany(c => c.Program.Ops)
            .SelectMany(op => new[] { (op.Person, op.Span, false), ((op as CardOp.Request)?.Role, op.Span, true) })
            .Where(m => m.Item1 is { } role && situation.People.All(p => p.Role != role.Name))
            .Select(m => (m.Item1!, m.Span, m.Item3));
}
