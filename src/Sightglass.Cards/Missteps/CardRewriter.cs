using System.Collections.Immutable;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Missteps;

/// <summary>Rewrites a card's tree from the leaves up. Override what is to change; null leaves an element out.</summary>
public abstract class CardRewriter
{
    public Card Rewrite(Card card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return card with { Elements = [.. card.Elements.Select(Element).OfType<CardElement>()] };
    }

    protected virtual CardElement? Element(CardElement element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return element switch
        {
            CardElement.Step step => Step(step),
            CardElement.ListItem item => item with { Sentences = Sentences(item.Sentences) },
            CardElement.Head head => head with { Sentences = Sentences(head.Sentences) },
            CardElement.Notice notice => Sentence(notice.Sentence) is { } sentence ? notice with { Sentence = sentence } : null,
            _ => element,
        };
    }

    protected virtual CardElement? Step(CardElement.Step step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step with { Sentences = Sentences(step.Sentences) };
    }

    /// <summary>A sentence after what is inside it was rewritten; null leaves it out.</summary>
    protected virtual Sentence? Sentence(Sentence sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        ImmutableSortedDictionary<string, Slot>.Builder slots = sentence.Slots.ToBuilder();
        foreach ((string gap, Slot slot) in sentence.Slots)
        {
            slots[gap] = Slot(slot);
        }

        return sentence with { Slots = slots.ToImmutable(), Tails = Sentences(sentence.Tails) };
    }

    protected virtual Slot Slot(Slot slot) => slot is Slot.Done done ? done with { Sentences = Sentences(done.Sentences) } : slot;

    private ImmutableArray<Sentence> Sentences(ImmutableArray<Sentence> sentences) => [.. sentences.Select(Sentence).OfType<Sentence>()];
}
