using System.Collections.Immutable;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Missteps;

/// <summary>Cards as people do them when they err.</summary>
public static class Misstep
{
    /// <summary>The card without each of its steps in turn, and behind each without each line of its list.</summary>
    /// <param name="card">Its steps numbered 1, 2, 3, ….</param>
    /// <returns>The step, the line of its list or 0, their text as printed, and the rest.</returns>
    public static IEnumerable<(int Step, int Line, string Text, Card Left)> Each(Card card)
    {
        foreach (CardElement.Step step in card.Steps)
        {
            yield return (step.Number, 0, step.Span.Text.Trim(), LeaveOut(card, step.Number));
            ImmutableArray<CardElement.ListItem> list = card.ListUnder(step);
            for (int line = 1; line <= list.Length && list.Length > 1; line++)
            {
                yield return (step.Number, line, list[line - 1].Span.Text.Trim(), LeaveOut(card, step.Number, line));
            }
        }
    }

    /// <summary>
    /// The card without one step. Its notices and its list go with it, the steps behind move up, and who is sent to it is sent to the one
    /// that stands in its place (to the end after the last). A Repeat that would repeat nothing goes as well.
    /// </summary>
    /// <param name="card">A card whose steps are numbered 1, 2, 3, …; others are renumbered first.</param>
    /// <param name="step">Its number after that.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such step.</exception>
    public static Card LeaveOut(Card card, int step)
    {
        Card numbered = StepNumbers.Renumber(card);
        int count = numbered.Steps.Count();
        ArgumentOutOfRangeException.ThrowIfLessThan(step, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(step, count);
        CardElement.Step gone = numbered.Steps.ElementAt(step - 1);
        HashSet<CardElement> with = new([gone, .. numbered.ListUnder(gone), .. NoticesOf(numbered, gone)], ReferenceEqualityComparer.Instance);
        Card left = new Remover(with, step, count).Rewrite(numbered) with { Forgotten = [.. numbered.Forgotten, .. NamesOf(gone.Sentences, [.. numbered.ListUnder(gone).SelectMany(i => i.Sentences)])] };
        return left.Steps.FirstOrDefault(s => s.Sentences.IsEmpty) is { } empty ? LeaveOut(left, empty.Number) : left;
    }

    /// <summary>The card without one line of a step's list; without the step where it was the only line.</summary>
    /// <param name="card">A card whose steps are numbered 1, 2, 3, …; others are renumbered first.</param>
    /// <param name="step">The step's number after that.</param>
    /// <param name="line">Of its list, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such step or line.</exception>
    public static Card LeaveOut(Card card, int step, int line)
    {
        Card numbered = StepNumbers.Renumber(card);
        ArgumentOutOfRangeException.ThrowIfLessThan(step, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(step, numbered.Steps.Count());
        CardElement.Step of = numbered.Steps.ElementAt(step - 1);
        ImmutableArray<CardElement.ListItem> list = numbered.ListUnder(of);
        ArgumentOutOfRangeException.ThrowIfLessThan(line, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(line, list.Length);
        CardElement.ListItem gone = list[line - 1];
        return list.Length == 1
            ? LeaveOut(card, step)
            : numbered with { Elements = numbered.Elements.Remove(gone), Forgotten = [.. numbered.Forgotten, .. NamesOf(of.Sentences, gone.Sentences)] };
    }

    /// <summary>What gives names that other steps use; within rounds, so that their noun is still understood.</summary>
    private static IEnumerable<Sentence> NamesOf(IEnumerable<Sentence> sentences, ImmutableArray<Sentence> list) => sentences.SelectMany(sentence =>
    {
        Sentence[] inner = [.. NamesOf(sentence.Slots.Values.OfType<Slot.Done>().SelectMany(d => d.Sentences).Concat(sentence.Tails).Concat(list), [])];
        return sentence.Operation switch
        {
            Operation.Read or Operation.AskProtection or Operation.DoCard => inner.Prepend(sentence),
            Operation.ForEach => [sentence with { Slots = sentence.Slots.SetItem("actions", new Slot.Done([.. inner], sentence.Span)), Tails = [] }],
            _ => inner,
        };
    });

    /// <summary>The notices that stand before a step.</summary>
    public static ImmutableArray<CardElement.Notice> NoticesOf(Card card, CardElement.Step step)
    {
        ArgumentNullException.ThrowIfNull(card);
        int at = card.Elements.IndexOf(step);
        return
        [
            .. card.Elements.Take(Math.Max(0, at)).Reverse()
                .TakeWhile(e => e is CardElement.Notice or CardElement.Comment or CardElement.Blank)
                .OfType<CardElement.Notice>().Reverse(),
        ];
    }

    private sealed class Remover(HashSet<CardElement> gone, int step, int count) : CardRewriter
    {
        protected override CardElement? Element(CardElement element) => gone.Contains(element) ? null : base.Element(element);

        protected override CardElement? Step(CardElement.Step other) =>
            base.Step(other) is CardElement.Step kept ? kept with { Number = Moved(kept.Number) } : null;

        protected override Sentence? Sentence(Sentence sentence)
        {
            if (sentence.Operation == Operation.Repeat)
            {
                return Repeat(sentence);
            }

            bool toEnd = sentence.Operation == Operation.Jump && sentence.StepAt("step")?.Number == step && step == count;
            return toEnd ? Tree.Sentence.Of(Operation.JumpToEnd) with { Span = sentence.Span } : base.Sentence(sentence);
        }

        protected override Slot Slot(Slot slot) => slot is Slot.StepNumber number ? number with { Number = Moved(number.Number) } : base.Slot(slot);

        private int Moved(int number) => number > step ? number - 1 : number;

        /// <summary>The range shrinks when the step was its first or last.</summary>
        private Sentence? Repeat(Sentence sentence)
        {
            int first = sentence.StepAt("first")?.Number ?? 0;
            int last = sentence.StepAt("last")?.Number ?? first;
            if (first == step && last == step)
            {
                return null;
            }

            Sentence? moved = base.Sentence(sentence);
            return moved?.StepAt("last") is { } end && last == step ? moved with { Slots = moved.Slots.SetItem("last", end with { Number = step - 1 }) } : moved;
        }
    }
}
