using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Tries;

/// <summary>In which situations a card can be tried.</summary>
public static class CardSituations
{
    /// <summary>The situations that are said to be for a card.</summary>
    public static IReadOnlyList<Situation> For(ClassBook book, SourceText card)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(card);
        string name = Path.GetFileNameWithoutExtension(card.Path);
        return InOrder(book.Situations.Values.Where(s => s.Cards.Contains(name, StringComparer.Ordinal)));
    }

    /// <summary>In the order of the author's files.</summary>
    public static IReadOnlyList<Situation> InOrder(IEnumerable<Situation> situations) => [.. situations.OrderBy(s => s.Span)];

    /// <summary>The train in whose names a card is read: that of the first situation named, or that of the situations it is for.</summary>
    public static string? TrainOf(ClassBook book, SourceText card, IReadOnlyList<string> named)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(named);
        return named.Count > 0 ? book.Situations.GetValueOrDefault(named[0])?.Train : book.TrainOf(card);
    }

    /// <summary>The role that is missing for a card in a situation, or null when the card can be begun there.</summary>
    public static string? Missing(ImmutableArray<ProgramChoice> choices, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(situation);
        if (choices.IsDefaultOrEmpty)
        {
            return null;
        }

        CardProgram program = choices[0].Program;
        return program.For.IsEmpty
            ? situation.People.IsEmpty ? "somebody" : null
            : situation.People.Any(p => p.Role == program.For[0].Name) ? null : program.For[0].Name;
    }
}
