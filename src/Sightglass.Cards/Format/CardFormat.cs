using System.Globalization;
using System.Text;
using Sightglass.Cards.Missteps;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Format;

/// <summary>Prints a card in the one way it is written: single spaces, numbered steps, capitals and full stops. Comments stay.</summary>
public static class CardFormat
{
    private const string ListMark = "   - ";

    /// <summary>The canonical text, ending with one line end. Reading it gives the same card; printing that gives the same text.</summary>
    public static string Format(Card card)
    {
        ArgumentNullException.ThrowIfNull(card);
        Card numbered = StepNumbers.Renumber(card);
        SentencePrinter printer = new(card.Language);
        StringBuilder text = new();
        bool blank = true;
        foreach (CardElement element in numbered.Elements)
        {
            bool isBlank = element is CardElement.Blank;
            if (isBlank && blank)
            {
                continue;
            }

            text.Append(Print(element, printer, card)).Append('\n');
            blank = isBlank;
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static string Print(CardElement element, SentencePrinter printer, Card card) => element switch
    {
        CardElement.Comment comment => $"{card.Language.Small.Comment} {comment.Text}".TrimEnd(),
        CardElement.Head head => printer.Line(head.Sentences),
        CardElement.Notice notice => printer.Line([notice.Sentence]),
        CardElement.Step step => step.Number.ToString(CultureInfo.InvariantCulture) + ". " + Person(step.Person) + printer.Line(step.Sentences),
        CardElement.ListItem item => ListMark + Person(item.Person) + printer.Line(item.Sentences),
        CardElement.Unread unread => string.Join('\n', unread.Text.Split('\n').Select(l => l.TrimEnd())),
        _ => "",
    };

    private static string Person(Phrase? person) => person is null ? "" : Sentences.PatternPrinter.Capital(person.Text) + ": ";
}
