using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Tree;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Training.Drills;

namespace Sightglass.Web.Room.Trainee;

/// <summary>The cards that somebody may take in hand, as they stand in the book.</summary>
internal static class TraineeCards
{
    /// <summary>By the texts, which road numbers and trains of a book share, and the language.</summary>
    private static readonly ConditionalWeakTable<SourceText[], ConcurrentDictionary<string, Lazy<ImmutableArray<(string, string)>>>> s_titles = [];

    /// <summary>Names of their files and titles, in the order of titles; which of them helps is not told.</summary>
    public static ImmutableArray<(string Name, string Title)> Of(ClassBook book) => s_titles.GetOrCreateValue(ImmutableCollectionsMarshal.AsArray(book.CardTexts)!).GetOrAdd(
        Tongue.Spoken.Code,
        _ => new(() => [.. book.CardTexts.Select(t => (Path.GetFileNameWithoutExtension(t.Path), Read(book, t)?.Title)).Where(c => c.Title is not null).Select(c => (c.Item1, c.Title!)).OrderBy(c => c.Item2, StringComparer.CurrentCulture)])).Value;

    /// <summary>A card as it is printed; empty where there is none of that name.</summary>
    public static string Text(BoundDrill bound, string name)
    {
        ClassBook book = bound.Plan.Book;
        return book.CardTexts.FirstOrDefault(t => Path.GetFileNameWithoutExtension(t.Path) == name) is { } text && Read(book, text) is { } card
            ? HtmlPaper.Write(CardPaper.Of(card, new CardStamp([], Say.With($"{book.Title}, edition {book.Edition}."), default, null), book))
            : "";
    }

    private static Card? Read(ClassBook book, SourceText text) => CardReader.Read(TranslatedCards.Of(book, text, Tongue.Spoken) ?? text, book, []) is { HasErrors: false } card ? card : null;
}
