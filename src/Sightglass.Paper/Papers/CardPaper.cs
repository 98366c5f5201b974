using System.Text.RegularExpressions;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Papers;

/// <summary>A card for the pocket, with the very text that was tried and its stamp.</summary>
public static partial class CardPaper
{
    /// <param name="card">Without errors.</param>
    /// <param name="stamp">What is said of it.</param>
    /// <param name="book">Whose card it is.</param>
    /// <param name="address">Where its page is found; null for none.</param>
    public static PaperDocument Of(Card card, CardStamp stamp, ClassBook book, string? address = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(stamp);
        ArgumentNullException.ThrowIfNull(book);
        PaperBlock[] code = address is null ? [] : [new PaperBlock.Code(address, Say.It("This card on its page, as it stands today."))];
        return new PaperDocument(card.Title, PaperLook.Pocket, [new PaperBlock.Heading(1, card.Title), .. Head(card), new PaperBlock.Steps([.. Lines(card)]), Stamp(stamp, PaperWords.Notice(book)), .. code])
        {
            Style = "pocket",
            Machine = PaperWords.Machine(book),
            Printed = stamp.Printed,
        };
    }

    private static IEnumerable<PaperBlock> Head(Card card)
    {
        foreach (CardElement.Head head in card.Elements.OfType<CardElement.Head>().Where(h => h.Sentences.All(s => s.Operation != Operation.Card)))
        {
            (string word, string rest) = Parted(Flat(head.Span.Text));
            PaperText text = word.Length == 0 ? PaperText.OfCard(rest) : new([new PaperRun(word + ":", RunStyle.Strong), new PaperRun(" " + rest) { Verbatim = true }]);
            yield return new PaperBlock.Paragraph(text, ParagraphSort.Head);
        }
    }

    private static IEnumerable<StepLine> Lines(Card card)
    {
        foreach (CardElement element in card.Elements)
        {
            string text = Flat(element.Span.Text);
            switch (element)
            {
                case CardElement.Notice notice:
                    SignalWord word = Enum.TryParse(notice.Sentence.Operation.ToString(), out SignalWord signal) ? signal : SignalWord.Notice;
                    yield return new StepLine.Notice(word, PaperText.OfCard(Parted(text).After));
                    break;
                case CardElement.Step step:
                    yield return new StepLine.Step(PaperWords.Number(step.Number), PaperText.OfCard(WithoutNumber(text)));
                    break;
                case CardElement.ListItem:
                    yield return new StepLine.Item(PaperText.OfCard(text.TrimStart('-', ' ')));
                    break;
            }
        }
    }

    private static PaperBlock.Box Stamp(CardStamp stamp, string notice)
    {
        List<PaperBlock> lines = [];
        if (stamp.NotToBeWorkedBy is { } warning)
        {
            lines.Add(new PaperBlock.Paragraph(warning, ParagraphSort.Loud));
        }
        else if (stamp.History.IsEmpty)
        {
            lines.Add(new PaperBlock.Paragraph(PaperText.Strong(Say.With($"Approved by {stamp.ApprovedBy}, {PaperWords.Day(stamp.Printed)}.")), ParagraphSort.Small));
        }

        IEnumerable<string> others = stamp.History.Concat(stamp.Tried).Append(stamp.Book).Append(notice).Where(t => t.Length > 0);
        return new PaperBlock.Box([.. lines, .. others.Select(t => new PaperBlock.Paragraph(t, ParagraphSort.Small))]);
    }

    /// <summary>What stands before the first colon, and after it.</summary>
    private static (string Word, string After) Parted(string text) =>
        text.IndexOf(':', StringComparison.Ordinal) is >= 0 and var colon ? (text[..colon], text[(colon + 1)..].Trim()) : ("", text);

    /// <summary>A text that was wrapped in its file, in one line; what stands in braces is for the program to fill in, and for a person to: a letter stays one, a word stands in brackets.</summary>
    private static string Flat(string text) =>
        Gap().Replace(string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), m => m.Groups[1].Length > 1 ? $"[{m.Groups[1].Value}]" : m.Groups[1].Value);

    [GeneratedRegex(@"\{([^{}]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Gap();

    private static string WithoutNumber(string step) => step.IndexOf(". ", StringComparison.Ordinal) is > 0 and var dot && step[..dot].All(char.IsDigit) ? step[(dot + 2)..] : step;
}
