using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>What steers the order of the steps.</summary>
internal sealed partial class StepCompiler
{
    private void CompileOrder(Sentence sentence, ImmutableArray<CardElement.ListItem> list)
    {
        switch (sentence.Operation)
        {
            case Operation.Jump or Operation.JumpToEnd when _apart:
                Found.Add(CardMessages.LeavesOthers(sentence.Span));
                break;
            case Operation.Jump:
                _ops.Add(new CardOp.Jump(StepLabel(sentence.StepAt("step"))) { Step = _step, Span = sentence.Span, Person = _person });
                break;
            case Operation.JumpToEnd:
                _ops.Add(new CardOp.Jump(_endLabel) { Step = _step, Span = sentence.Span, Person = _person });
                break;
            case Operation.If:
                If(sentence);
                break;
            case Operation.When:
                Found.Add(CardMessages.WhenSentence(sentence.Span));
                break;
            case Operation.Repeat:
                Repeat(sentence);
                break;
            case Operation.AnyOrder:
                InOrder(sentence, list);
                break;
            case Operation.SameTime:
                AtTheSameTime(sentence, list);
                break;
            case Operation.ForEach:
                EachRound(sentence, () => InOrder(sentence, list));
                break;
            case Operation.NextRound:
                _ops.Add(new CardOp.Jump(NextRound(sentence)) { Step = _step, Span = sentence.Span, Person = _person });
                break;
            case Operation.OneOf:
                OneOf(sentence, list);
                break;
            case Operation.DoCard:
                DoCard(sentence);
                break;
        }
    }

    private void If(Sentence sentence)
    {
        Condition? condition = sentence.ConditionAt("condition") is { } seen ? _round.Conditions.Compile(seen) : null;
        int next = _ops.NewLabel();
        int otherwise = Otherwise(sentence, next);
        _ops.Add(condition is null ? Nothing(sentence, otherwise) : new CardOp.If(condition, otherwise) { Step = _step, Span = sentence.Span, Person = _person });
        foreach (Sentence action in sentence.ActionsAt("action"))
        {
            Compile(action, []);
        }

        _ops.Place(next);
    }

    private void Repeat(Sentence sentence)
    {
        Slot.StepNumber? first = sentence.StepAt("first");
        Slot.StepNumber? last = sentence.StepAt("last") ?? first;
        int[] numbers = [.. _card.Steps.Select(s => s.Number)];
        int here = Array.IndexOf(numbers, _step);
        int from = Array.IndexOf(numbers, first?.Number ?? 0);
        int to = Array.IndexOf(numbers, last?.Number ?? 0);
        if (from < 0 || to < 0)
        {
            StepLabel(from < 0 ? first : last);
        }
        else if (from > to || to != here - 1)
        {
            Found.Add(CardMessages.RepeatRange(sentence.Span, from > to ? "the steps to repeat are named backwards" : "the last step to repeat is not the one just before"));
        }

        Condition? condition = sentence.ConditionAt("condition") is { } seen ? _round.Conditions.Compile(seen) : null;
        if (sentence.Slots.GetValueOrDefault("count") is null)
        {
            Found.Add(CardMessages.NoLimit(sentence.Span));
        }

        int times = (sentence.Slots.GetValueOrDefault("count") as Slot.Count)?.Number ?? 1;
        double period = sentence.AmountAt("period") is null ? 0 : Seconds(sentence, "period");
        int back = from >= 0 ? StepLabel(first) : _endLabel;
        int counter = _ops.NewCounter();
        Branch(sentence, otherwise => condition is null
            ? Nothing(sentence, otherwise)
            : new CardOp.Repeat(condition, times, period, back, counter, otherwise) { Step = _step, Span = sentence.Span, Person = _person });
    }

    /// <summary>In the order they are written, which is as good as any.</summary>
    private void InOrder(Sentence sentence, ImmutableArray<CardElement.ListItem> list)
    {
        foreach (Sentence action in sentence.ActionsAt("actions"))
        {
            Compile(action, []);
        }

        foreach (CardElement.ListItem item in list)
        {
            WithPerson(item, () =>
            {
                foreach (Sentence action in item.Sentences)
                {
                    Compile(action, []);
                }
            });
        }
    }

    /// <summary>Each line is one person's, and nobody has two.</summary>
    private void AtTheSameTime(Sentence sentence, ImmutableArray<CardElement.ListItem> list)
    {
        if (!sentence.ActionsAt("actions").IsEmpty || _apart)
        {
            Found.Add(CardMessages.NotApart(sentence.Span));
            return;
        }

        int[] labels = [.. list.Select(_ => _ops.NewLabel())];
        int next = _ops.NewLabel();
        HashSet<string> people = new(StringComparer.Ordinal);
        _ops.Add(new CardOp.Together([.. labels], next) { Step = _step, Span = sentence.Span, Person = _person });
        foreach ((int index, CardElement.ListItem item) in list.Index())
        {
            _ops.Place(labels[index]);
            int from = _ops.Count;
            WithPerson(item, () =>
            {
                _apart = true;
                foreach (Sentence action in item.Sentences)
                {
                    Compile(action, []);
                }

                _ops.Add(new CardOp.Join() { Step = _step, Span = item.Span, Person = _person });
                _apart = false;
                if (item.Person is null || _person is null || !people.Add(_person.Name) || _ops.AnyByOther(from, _person))
                {
                    Found.Add(CardMessages.NotApart(item.Span));
                }
            });
        }

        _ops.Place(next);
    }

    /// <summary>The first whose condition holds is done, and no other; one without a condition is done when none before it was.</summary>
    private void OneOf(Sentence sentence, ImmutableArray<CardElement.ListItem> list)
    {
        int end = _ops.NewLabel();
        Sentence[] choices = [.. sentence.ActionsAt("actions"), .. list.SelectMany(i => i.Sentences)];
        foreach (Sentence choice in choices)
        {
            int next = _ops.NewLabel();
            if (choice.Operation == Operation.If && choice.ConditionAt("condition") is { } seen)
            {
                Condition? condition = _round.Conditions.Compile(seen);
                _ops.Add(condition is null ? Nothing(choice, next) : new CardOp.If(condition, next) { Step = _step, Span = choice.Span, Person = _person });
                foreach (Sentence action in choice.ActionsAt("action"))
                {
                    Compile(action, []);
                }
            }
            else
            {
                Compile(choice, []);
            }

            Sentence done = choice.Operation == Operation.If ? choice.ActionsAt("action").LastOrDefault() ?? choice : choice;
            if (!Leaves(done) && choice != choices[^1])
            {
                _ops.Add(new CardOp.Jump(end) { Step = _step, Span = choice.Span, Person = _person });
            }

            _ops.Place(next);
        }

        _ops.Place(end);
    }

    private void WithPerson(CardElement.ListItem item, Action compile)
    {
        Book.Model.Role? before = _person;
        _person = item.Person is null ? _person : Resolver.Role(item.Person);
        compile();
        _person = before;
    }
}
