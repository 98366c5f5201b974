using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Tree;

/// <summary>A sentence of a card: what it means and what fills its gaps. Its words come from the language's table.</summary>
public sealed record Sentence(Operation Operation, ImmutableSortedDictionary<string, Slot> Slots, Span Span)
{
    /// <summary>Sentences that complete it: <c>If not, …</c>.</summary>
    public ImmutableArray<Sentence> Tails { get; init; } = [];

    /// <summary>The row of the table that it was read by; null for one made by the program.</summary>
    public SentenceForm? Form { get; init; }

    /// <summary>A sentence made by the program.</summary>
    public static Sentence Of(Operation operation, params ReadOnlySpan<(string Gap, Slot Slot)> slots)
    {
        ImmutableSortedDictionary<string, Slot>.Builder filled = ImmutableSortedDictionary.CreateBuilder<string, Slot>(StringComparer.Ordinal);
        foreach ((string gap, Slot slot) in slots)
        {
            filled[gap] = slot;
        }

        return new(operation, filled.ToImmutable(), Span.None);
    }

    public Phrase? PhraseAt(string gap) => (Slots.GetValueOrDefault(gap) as Slot.Named)?.Phrase;

    public ImmutableArray<Phrase> PhrasesAt(string gap) => Slots.GetValueOrDefault(gap) switch
    {
        Slot.NamedList list => list.Phrases,
        Slot.Named one => [one.Phrase],
        _ => [],
    };

    public ConditionPhrase? ConditionAt(string gap) => (Slots.GetValueOrDefault(gap) as Slot.Seen)?.Condition;

    public Slot.Amount? AmountAt(string gap) => Slots.GetValueOrDefault(gap) as Slot.Amount;

    public Slot.StepNumber? StepAt(string gap) => Slots.GetValueOrDefault(gap) as Slot.StepNumber;

    public Slot.Text? TextAt(string gap) => Slots.GetValueOrDefault(gap) as Slot.Text;

    public ImmutableArray<Sentence> ActionsAt(string gap) => (Slots.GetValueOrDefault(gap) as Slot.Done)?.Sentences ?? [];

    public Sentence? Tail(Operation operation) => Tails.FirstOrDefault(t => t.Operation == operation);

    /// <summary>This sentence, those inside it and its tails, from left to right.</summary>
    public IEnumerable<Sentence> WithInner()
    {
        yield return this;
        foreach (Sentence inner in Slots.Values.OfType<Slot.Done>().SelectMany(d => d.Sentences).Concat(Tails).SelectMany(s => s.WithInner()))
        {
            yield return inner;
        }
    }

    /// <summary>Whether every gap and tail was understood.</summary>
    public bool IsRead => WithInner().All(s => s.Operation != Operation.Unread);
}
