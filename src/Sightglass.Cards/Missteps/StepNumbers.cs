using System.Collections.Immutable;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Missteps;

/// <summary>Numbers the steps 1, 2, 3, … and every reference to them alike.</summary>
public static class StepNumbers
{
    /// <summary>The card renumbered; as it is where a number stands twice or a reference leads nowhere, as its meaning is not clear then.</summary>
    public static Card Renumber(Card card)
    {
        ArgumentNullException.ThrowIfNull(card);
        int[] numbers = [.. card.Steps.Select(s => s.Number)];
        HashSet<int> known = [.. numbers];
        bool ordered = numbers.Index().All(n => n.Item == n.Index + 1);
        if (ordered || known.Count < numbers.Length || !References(card).All(known.Contains))
        {
            return card;
        }

        return new Mapper(numbers.Index().ToImmutableDictionary(n => n.Item, n => n.Index + 1)).Rewrite(card);
    }

    /// <summary>Every step number that some sentence names.</summary>
    public static IEnumerable<int> References(Card card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return AllSentences(card).SelectMany(s => s.Slots.Values.OfType<Slot.StepNumber>()).Select(s => s.Number);
    }

    private static IEnumerable<Sentence> AllSentences(Card card) => card.Elements.SelectMany(e => e switch
    {
        CardElement.Step step => step.Sentences,
        CardElement.ListItem item => item.Sentences,
        _ => ImmutableArray<Sentence>.Empty,
    }).SelectMany(s => s.WithInner());

    private sealed class Mapper(ImmutableDictionary<int, int> to) : CardRewriter
    {
        protected override CardElement? Step(CardElement.Step step) => base.Step(step) is CardElement.Step s ? s with { Number = to[s.Number] } : null;

        protected override Slot Slot(Slot slot) => slot is Slot.StepNumber number && to.TryGetValue(number.Number, out int mapped) ? number with { Number = mapped } : base.Slot(slot);
    }
}
