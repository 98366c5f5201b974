using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards;

/// <summary>
/// Cards of a book in another language. A translation is the same card only where it is the same program: every step does the same to the same items, whatever
/// its letters stand for. So what was tried in one language was tried in both.
/// </summary>
public static class TranslatedCards
{
    /// <summary>Compares the cards of a language with those of the book: T009 (not translated), T010 (not the same), what is wrong with a translation itself, and where its wording is not that of a good procedure: L001…L020.</summary>
    public static void Check(ClassBook book, BookWords words, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(found);
        Dictionary<(string Train, string Language), CardNames> names = [];
        foreach (SourceText text in book.CardTexts)
        {
            string name = Path.GetFileNameWithoutExtension(text.Path);
            CardLanguage own = CardLanguages.Of(text) ?? EnglishForms.Language, other = CardLanguages.Of(words.Tongue);
            if (own.Code == other.Code)
            {
                continue;
            }

            if (words.CardOf(name) is not { } translation)
            {
                found.Add(new("T009", Severity.Warning, text.Between(0, 0), $"the card `{name}` is not said in {words.Tongue.Name}", $"write it as `{WordsReader.Folder}/{words.Tongue.Code}/{name}.card`"));
                continue;
            }

            DiagnosticList wrong = [];
            if (CardReader.Read(text, NamesOf(text, own), []) is { HasErrors: false } card
                && CardReader.Read(translation, NamesOf(text, other), wrong) is { } said && !said.HasErrors
                && Difference(card, NamesOf(text, own), said, NamesOf(text, other)) is var (step, wanted, given))
            {
                wrong.Add(Differs(said, step, wanted, given));
            }
            else if (!wrong.HasErrors)
            {
                wrong.AddRange(WordingOf(text, NamesOf(text, own), translation, NamesOf(text, other)));
            }

            found.AddRange(wrong);
        }

        CardNames NamesOf(SourceText text, CardLanguage language)
        {
            string train = book.TrainOf(text) ?? "";
            if (!names.TryGetValue((train, language.Code), out CardNames? known))
            {
                names[(train, language.Code)] = known = new(train.Length == 0 ? book : book.Coupled(train), language);
            }

            return known;
        }
    }

    /// <summary>What lint says of a translation at a step of which it does not say the same of the card: the author is told that already.</summary>
    private static IEnumerable<Diagnostic> WordingOf(SourceText text, CardNames names, SourceText translation, CardNames said)
    {
        HashSet<(string, int)> known = [.. Linted(text, names).Select(f => (f.Finding.Code, f.Step))];
        return Linted(translation, said).Where(f => !known.Contains((f.Finding.Code, f.Step))).Select(f => f.Finding);
    }

    private static IEnumerable<(Diagnostic Finding, int Step)> Linted(SourceText text, CardNames names)
    {
        if (CardReader.Read(text, names, []) is not { HasErrors: false } card)
        {
            return [];
        }

        DiagnosticList found = [];
        CardLint.Check(card, names, found);
        return found.Select(d => (d, card.Steps.Where(s => s.Span.Start <= d.Span.Start).Select(s => s.Number).LastOrDefault()));
    }

    /// <summary>A card of a book as another language says it; null where it does not, or where that is not the same program.</summary>
    /// <param name="book">In whose names the card speaks, with its languages.</param>
    /// <param name="text">One of its cards.</param>
    /// <param name="tongue">The language.</param>
    public static SourceText? Of(ClassBook book, SourceText text, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(tongue);
        CardLanguage own = CardLanguages.Of(text) ?? EnglishForms.Language, other = CardLanguages.Of(tongue);
        if (own.Code == other.Code || book.Languages.GetValueOrDefault(tongue.Code)?.CardOf(Path.GetFileNameWithoutExtension(text.Path)) is not { } translation)
        {
            return null;
        }

        CardNames names = new(book, own), said = new(book, other);
        return CardReader.Read(text, names, []) is { HasErrors: false } card && CardReader.Read(translation, said, []) is { HasErrors: false } translated && Difference(card, names, translated, said) is null ? translation : null;
    }

    private static Diagnostic Differs(Card said, int step, string wanted, string given)
    {
        CardElement? at = step > 0 ? said.Steps.FirstOrDefault(s => s.Number == step) : said.Elements.OfType<CardElement.Head>().FirstOrDefault();
        return new("T010", Severity.Error, at?.Span ?? said.Source.Between(0, 0), $"this is not what the card does: `{given}`", $"it should do `{wanted}`");
    }

    /// <summary>The first thing that two cards do not do alike, with the step of the second; null where they are the same.</summary>
    private static (int Step, string Wanted, string Given)? Difference(Card card, CardNames names, Card said, CardNames saidNames)
    {
        int notices = card.Elements.OfType<CardElement.Notice>().Count(), saidNotices = said.Elements.OfType<CardElement.Notice>().Count();
        if (notices != saidNotices)
        {
            return (0, $"{notices} notices", $"{saidNotices} notices");
        }

        ImmutableArray<Letter> letters = CardCompiler.LettersOf(card), saidLetters = CardCompiler.LettersOf(said);
        if (!letters.Select(l => l.Domain.Length).SequenceEqual(saidLetters.Select(l => l.Domain.Length)))
        {
            return (0, $"letters for {string.Join(", ", letters.Select(l => l.Domain.Length))} things", $"letters for {string.Join(", ", saidLetters.Select(l => l.Domain.Length))} things");
        }

        if (letters.IsEmpty)
        {
            return Difference(Program(card, names, [], 0), Program(said, saidNames, [], 0));
        }

        for (int letter = 0; letter < letters.Length; letter++)
        {
            for (int word = 0; word < letters[letter].Domain.Length; word++)
            {
                if (Difference(Program(card, names, letters[letter..(letter + 1)], word), Program(said, saidNames, saidLetters[letter..(letter + 1)], word)) is { } found)
                {
                    return found;
                }
            }
        }

        return null;
    }

    private static CardProgram Program(Card card, CardNames names, ImmutableArray<Letter> letters, int word) =>
        CardCompiler.Compile(card, names, letters.ToImmutableDictionary(l => l.Name, l => l.Domain[word]), []);

    private static (int Step, string Wanted, string Given)? Difference(CardProgram program, CardProgram said)
    {
        ImmutableArray<(int Step, string Line)> wanted = ProgramListing.Doings(program), given = ProgramListing.Doings(said);
        for (int i = 0; i < Math.Max(wanted.Length, given.Length); i++)
        {
            string want = i < wanted.Length ? wanted[i].Line : "nothing more", give = i < given.Length ? given[i].Line : "nothing more";
            if (want != give)
            {
                return (i < given.Length ? given[i].Step : 0, want, give);
            }
        }

        return null;
    }
}
