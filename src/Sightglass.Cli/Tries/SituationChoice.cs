using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.World.Runs;

namespace Sightglass.Cli.Tries;

/// <summary>Which situations a card is tried in: those named, those that are said to be for it, or all where somebody is who may work by it.</summary>
internal static class SituationChoice
{
    /// <returns>Null after an unknown name, which <paramref name="error"/> was told.</returns>
    public static IReadOnlyList<Situation>? Choose(ClassBook book, SourceText card, IReadOnlyList<string> named, Func<Situation, bool> hasSomebody, TextWriter error)
    {
        if (named.Count == 0)
        {
            IReadOnlyList<Situation> own = For(book, card);
            return own.Count > 0 ? own : InOrder(book.Situations.Values.Where(hasSomebody));
        }

        foreach (string name in named.Where(n => !book.Situations.ContainsKey(n)))
        {
            error.WriteLine($"The book has no situation `{name}`; {Nearest.DidYouMean(name, book.Situations.Keys) ?? $"it has: {string.Join("; ", book.Situations.Keys)}"}");
            return null;
        }

        return [.. named.Select(n => book.Situations[n])];
    }

    /// <summary>The train in whose names a card is read: that of the first situation named, or that of the situations it is for.</summary>
    public static string? TrainOf(ClassBook book, SourceText card, IReadOnlyList<string> named) =>
        named.Count > 0 ? book.Situations.GetValueOrDefault(named[0])?.Train : book.TrainOf(card);

    /// <summary>The situations that are said to be for a card.</summary>
    public static IReadOnlyList<Situation> For(ClassBook book, SourceText card)
    {
        string name = Path.GetFileNameWithoutExtension(card.Path);
        return InOrder(book.Situations.Values.Where(s => s.Cards.Contains(name, StringComparer.Ordinal)));
    }

    private static IReadOnlyList<Situation> InOrder(IEnumerable<Situation> situations) =>
        [.. situations.OrderBy(s => s.Span)];

    /// <summary>The role that is missing for a card in a situation, or null when the card can be begun there.</summary>
    public static string? Missing(ImmutableArray<ProgramChoice> choices, Situation situation)
    {
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
