using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>Checks what concerns the card as a whole: its head, the numbers of its steps, its lists.</summary>
internal static class CardStructure
{
    private static readonly Operation[] s_once =
    [
        Operation.Card, Operation.For, Operation.Told, Operation.Needs, Operation.UseWhen, Operation.DoneWhen, Operation.StaysSo,
    ];

    private static readonly Operation[] s_required = [Operation.For, Operation.DoneWhen];

    public static void Check(Card card, DiagnosticList found)
    {
        CheckHead(card, found);
        CheckNumbers(card, found);
        CheckLists(card, found);
    }

    /// <summary>Whether a step's sentence takes the list lines that follow.</summary>
    public static bool TakesList(CardElement.Step step) => step.Sentences.Any(TakesList);

    private static bool TakesList(Sentence sentence) =>
        sentence.Operation is Operation.AnyOrder or Operation.OneOf or Operation.SameTime or Operation.ForEach && sentence.ActionsAt("actions").IsEmpty;

    /// <summary>A list stands under a step only: within another sentence its lines have no place.</summary>
    private static void CheckInner(CardElement element, DiagnosticList found)
    {
        IEnumerable<Sentence> inner = element switch
        {
            CardElement.Step step => step.Sentences.SelectMany(s => s.WithInner().Skip(1)),
            CardElement.ListItem item => item.Sentences.SelectMany(s => s.WithInner()),
            _ => [],
        };
        foreach (Sentence sentence in inner.Where(TakesList))
        {
            found.Add(CardMessages.EmptyList(sentence.Span));
        }
    }

    private static void CheckHead(Card card, DiagnosticList found)
    {
        foreach (Operation once in s_once)
        {
            Sentence[] given = [.. card.HeadSentences.Where(s => s.Operation == once)];
            foreach (Sentence again in given.Skip(1))
            {
                found.Add(CardMessages.HeadTwice(again.Span, Label(card, once), given[0].Span));
            }
        }

        Span top = card.Source.Between(0, 0);
        if (card.Head(Operation.Card) is null)
        {
            found.Add(CardMessages.NotACard(top, Form(card, Operation.Card)));
        }

        foreach (Operation required in s_required.Where(r => card.Head(r) is null && !card.Elements.Any(e => e is CardElement.Unread)))
        {
            found.Add(CardMessages.HeadMissing(card.Head(Operation.Card)?.Span ?? top, Form(card, required)));
        }

        foreach (IGrouping<string, Letter> letters in card.HeadSentences.Select(Letter.Of).OfType<Letter>().GroupBy(l => l.Name))
        {
            foreach (Letter again in letters.Skip(1))
            {
                found.Add(CardMessages.NameTaken(again.Span, again.Name));
            }
        }
    }

    private static void CheckNumbers(Card card, DiagnosticList found)
    {
        HashSet<int> seen = [];
        int wanted = 1;
        foreach (CardElement.Step step in card.Steps)
        {
            if (!seen.Add(step.Number))
            {
                found.Add(CardMessages.NumberTwice(step.Span, step.Number));
            }
            else if (step.Number != wanted)
            {
                found.Add(CardMessages.NumberOutOfOrder(step.Span, step.Number, wanted));
            }

            wanted++;
        }

        if (seen.Count == 0)
        {
            found.Add(CardMessages.NoSteps(card.Source.Between(0, 0)));
        }
    }

    private static void CheckLists(Card card, DiagnosticList found)
    {
        bool open = false;
        CardElement.Step? waiting = null;
        foreach (CardElement element in card.Elements)
        {
            CheckInner(element, found);
            switch (element)
            {
                case CardElement.Step step:
                    Report(waiting, found);
                    open = TakesList(step);
                    waiting = open ? step : null;
                    break;
                case CardElement.ListItem item when !open:
                    found.Add(CardMessages.StrayListItem(item.Span));
                    break;
                case CardElement.ListItem:
                    waiting = null;
                    break;
                case CardElement.Head or CardElement.Notice:
                    open = false;
                    break;
            }
        }

        Report(waiting, found);
    }

    private static void Report(CardElement.Step? waiting, DiagnosticList found)
    {
        if (waiting is not null)
        {
            found.Add(CardMessages.EmptyList(waiting.Span));
        }
    }

    private static string Label(Card card, Operation operation) =>
        string.Join(' ', card.Language.Of(operation)[0].Pattern.Leading.Where(w => w != ":"));

    private static string Form(Card card, Operation operation) => card.Language.Of(operation)[0].Pattern.Readable();
}
