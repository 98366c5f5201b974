using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Parsing;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards;

/// <summary>Reads cards. Takes any text, throws on none, reports all that is wrong at once.</summary>
public static class CardReader
{
    /// <summary>Characters beyond which a text is not read.</summary>
    public const int MostCharacters = 50_000;

    /// <summary>Lines beyond which a text is not read.</summary>
    public const int MostLines = 600;

    /// <summary>Letters a card may have.</summary>
    internal const int MostLetters = 8;

    /// <summary>Reads a card and resolves every name in it, for each word its letters may stand for.</summary>
    /// <param name="text">The card.</param>
    /// <param name="book">Whose names it uses.</param>
    /// <param name="found">Takes C001…C062, L017, L019 and the codes of quantities.</param>
    /// <param name="language">Its language; where none is said, that with whose words it begins, or else English.</param>
    /// <returns>The tree, also of a card with errors (<see cref="Card.HasErrors"/>); null when the text is no card at all.</returns>
    public static Card? Read(SourceText text, ClassBook book, DiagnosticList found, CardLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Read(text, new CardNames(book, language ?? CardLanguages.Of(text) ?? EnglishForms.Language), found);
    }

    /// <inheritdoc cref="Read(SourceText, ClassBook, DiagnosticList, CardLanguage?)"/>
    /// <param name="text">The card.</param>
    /// <param name="names">The book's names in the card's language: made once for many cards.</param>
    /// <param name="found">As above.</param>
    public static Card? Read(SourceText text, CardNames names, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(found);
        if (IsTooLarge(text))
        {
            found.Add(CardMessages.TooLarge(text.Between(0, 0), MostCharacters));
            return null;
        }

        DiagnosticList own = [];
        Card card = ReadTree(text, names, own);
        if (card.Head(Operation.Card) is null && !card.Steps.Any())
        {
            found.Add(CardMessages.NotACard(text.Between(0, 0), names.Language.Of(Operation.Card)[0].Pattern.Readable()));
            return null;
        }

        CardCompiler.CheckNames(card, names, own);
        found.AddRange(own);
        return card with { HasErrors = own.HasErrors };
    }

    internal static bool IsTooLarge(SourceText text) => text.Text.Length > MostCharacters || text.Text.AsSpan().Count('\n') >= MostLines;

    /// <summary>The tree alone, its names not resolved: of a card that another calls.</summary>
    internal static Card ReadTree(SourceText text, CardNames names, DiagnosticList found)
    {
        CardContext context = new(text, names);
        List<RawLine> lines = LineSplitter.Split(context.Source, context.Language);
        ElementReader reader = new(context);
        CardElement?[] elements = new CardElement?[lines.Count];
        ReadLetters(context, lines, reader, elements, found);
        foreach (int i in Enumerable.Range(0, lines.Count).OrderBy(i => lines[i].Kind == LineKind.Labelled))
        {
            elements[i] ??= reader.Read(lines[i], found); // the head last: it may speak of numbers that steps read
        }

        Card card = new(context.Source, context.Language, [.. elements.Select(e => e!)]);
        if (card.Head(Operation.Card) is not null || card.Steps.Any())
        {
            CardStructure.Check(card, found);
        }

        return card;
    }

    /// <summary>The title alone, without the rest being read: empty where the text has none.</summary>
    internal static string TitleOf(SourceText text, CardNames names)
    {
        CardContext context = new(text, names);
        ElementReader reader = new(context);
        return LineSplitter.Split(context.Source, context.Language)
            .Where(l => reader.Begins(l, Operation.Card))
            .Select(l => reader.Read(l, []) is CardElement.Head { Sentences: [{ Operation: Operation.Card } sentence, ..] } ? sentence.TextAt("title")?.Value : null)
            .OfType<string>().FirstOrDefault("");
    }

    /// <summary>Letters first, wherever they stand, as other lines of the head use them. Read twice: 'its' needs the letter itself.</summary>
    private static void ReadLetters(CardContext context, List<RawLine> lines, ElementReader reader, CardElement?[] elements, DiagnosticList found)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            if (!reader.Begins(lines[i], Operation.LetWhere, Operation.LetWhose, Operation.LetOneOf))
            {
                continue;
            }

            Scope before = context.Scope;
            if (before.Letters.Length >= MostLetters)
            {
                found.Add(CardMessages.TooManyLetters(context.Source.Between(lines[i].Start, lines[i].End), MostLetters));
                return;
            }

            CardElement first = reader.Read(lines[i], []);
            Letter? letter = first is CardElement.Head head ? Letter.Of(head.Sentences[0]) : null;
            ImmutableArray<Letter> letters = letter is null ? before.Letters : before.Letters.Add(letter);
            context.Scope = before with { Letters = letters, Owner = letter };
            elements[i] = reader.Read(lines[i], found);
            context.Scope = before with { Letters = letters };
        }
    }
}
