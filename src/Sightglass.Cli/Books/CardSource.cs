using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Plant.Plans;
using Sightglass.Trials;
using Sightglass.World.Runs;

namespace Sightglass.Cli.Books;

/// <summary>A card named on the command line: a file, or a title (or file name) of the book's own.</summary>
internal static class CardSource
{
    /// <summary>The text of the card, or null; what was wrong goes to <paramref name="error"/>.</summary>
    /// <param name="named">A file, a file's name without its ending, or a title.</param>
    /// <param name="book">Whose cards are looked through.</param>
    /// <param name="error">Is told what is wrong.</param>
    /// <param name="translated">Whether the card is read in the language that is spoken; else as its author wrote it.</param>
    public static SourceText? Find(string named, ClassBook book, TextWriter error, bool translated = true)
    {
        if (File.Exists(named))
        {
            return new SourceText(named.Replace('\\', '/'), File.ReadAllText(named));
        }

        book = translated ? book.In(Tongue.Spoken) : book;
        if (One(t => IsFile(t, named)) is { } file)
        {
            return file;
        }

        // Titles stand in the cards: every one is read for them, so files come first.
        if (One(t => string.Equals(TitleOf(t, book), named, StringComparison.OrdinalIgnoreCase)) is { } titled)
        {
            return titled;
        }

        IEnumerable<string> names = book.CardTexts.Select(t => TitleOf(t, book)).Concat(book.CardTexts.Select(t => FileName(t.Path)));
        error.WriteLine(Nearest.DidYouMean(named, names) is { } hint
            ? $"There is no card `{named}`; {hint}"
            : $"There is no card `{named}`: neither a file nor a title in the book. It has: {string.Join("; ", book.CardTexts.Select(t => TitleOf(t, book)))}.");
        return null;

        SourceText? One(Func<SourceText, bool> isIt) => book.CardTexts.Where(isIt).Take(2).ToArray() is [var only] ? only : null;
    }

    /// <summary>The card's programs, one for each thing its letter may stand for; null with the reasons in <paramref name="found"/>.</summary>
    public static (Card Card, ImmutableArray<ProgramChoice> Choices)? Compile(SourceText text, Plan plan, DiagnosticList found)
    {
        if (CardReader.Read(text, plan.Book, found) is not { HasErrors: false } card)
        {
            return null;
        }

        ImmutableArray<ProgramChoice> choices = TrialPreparation.Choices(plan, card, found);
        return found.HasErrors || choices.IsEmpty ? null : (card, choices);
    }

    private static bool IsFile(SourceText text, string named) =>
        string.Equals(FileName(text.Path), named, StringComparison.OrdinalIgnoreCase) || string.Equals(text.Path, named.Replace('\\', '/'), StringComparison.Ordinal);

    private static string TitleOf(SourceText text, ClassBook book) => CardReader.Read(text, book.For(text), [])?.Title ?? FileName(text.Path);

    private static string FileName(string path) => Path.GetFileNameWithoutExtension(path);
}
