using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Trials.Tries;

namespace Sightglass.Cli.Tries;

/// <summary>Which situations a card is tried in: those named, those that are said to be for it, or all where somebody is who may work by it.</summary>
internal static class SituationChoice
{
    /// <returns>Null after an unknown name, which <paramref name="error"/> was told.</returns>
    public static IReadOnlyList<Situation>? Choose(ClassBook book, SourceText card, IReadOnlyList<string> named, Func<Situation, bool> hasSomebody, TextWriter error)
    {
        if (named.Count == 0)
        {
            IReadOnlyList<Situation> own = CardSituations.For(book, card);
            return own.Count > 0 ? own : CardSituations.InOrder(book.Situations.Values.Where(hasSomebody));
        }

        foreach (string name in named.Where(n => !book.Situations.ContainsKey(n)))
        {
            error.WriteLine($"The book has no situation `{name}`; {Nearest.DidYouMean(name, book.Situations.Keys) ?? $"it has: {string.Join("; ", book.Situations.Keys)}"}");
            return null;
        }

        return [.. named.Select(n => book.Situations[n])];
    }
}
