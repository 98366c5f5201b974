using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Parsing;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>
/// Puts the steps of a card down as operations. What is done 'if not' stands behind the last step, so that the steps themselves stay in
/// the order of the card.
/// </summary>
internal sealed partial class StepCompiler
{
    private readonly Card _card;
    private readonly WrittenNames _written;
    private readonly OpList _ops;
    private readonly Dictionary<int, int> _stepLabels = [];
    private readonly HashSet<int> _placed = [];
    private readonly Queue<Aside> _asides = new();
    private readonly List<Protection> _asked = [];
    private readonly List<FactCondition> _mustNevers = [];
    private readonly ImmutableArray<string> _titles;
    private int _endLabel;
    private int _step;

    /// <summary>Whether what is compiled is done at the same time as what others do.</summary>
    private bool _apart;
    private Role? _person;
    private Round _round;

    public StepCompiler(Card card, NameResolver resolver, WrittenNames written)
        : this(card, resolver, written, new(), [card.Title])
    {
    }

    private StepCompiler(Card card, NameResolver resolver, WrittenNames written, OpList ops, ImmutableArray<string> titles)
    {
        (_card, _written, _ops, _titles) = (card, written, ops, titles);
        _round = new(null, resolver, new(resolver, written), new(resolver, written), 0, null);
    }

    public int Counters => _ops.Counters;

    /// <summary>What the cards that this one calls must never let happen.</summary>
    public IEnumerable<FactCondition> InheritedMustNevers => _mustNevers;

    private NameResolver Resolver => _round.Resolver;

    private DiagnosticList Found => Resolver.Diagnostics;

    public ImmutableArray<CardOp> Compile()
    {
        CompileSteps();
        _ops.Place(_endLabel);
        _ops.Add(new CardOp.Done { Step = _step, Span = _card.Steps.LastOrDefault()?.Span ?? Span.None });
        CompileAsides();
        return _ops.Build();
    }

    private void CompileSteps()
    {
        foreach (CardElement.Step step in _card.Steps)
        {
            _stepLabels.TryAdd(step.Number, _ops.NewLabel());
        }

        _endLabel = _ops.NewLabel();
        Remember(_card.Forgotten);
        foreach (CardElement.Step step in _card.Steps)
        {
            Compile(step);
        }
    }

    private void CompileAsides()
    {
        while (_asides.TryDequeue(out Aside? aside))
        {
            Compile(aside);
        }
    }

    private void Compile(CardElement.Step step)
    {
        if (_placed.Add(step.Number))
        {
            _ops.Place(_stepLabels[step.Number]);
        }

        (_step, _person) = (step.Number, step.Person is null ? null : Resolver.Role(step.Person));
        foreach (Sentence sentence in step.Sentences)
        {
            ImmutableArray<CardElement.ListItem> list = CardStructure.TakesList(step) ? _card.ListUnder(step) : [];
            Compile(sentence, list);
        }
    }

    /// <summary>Keeps the names of sentences that were left out, without doing them.</summary>
    private void Remember(ImmutableArray<Sentence> forgotten)
    {
        foreach (Sentence sentence in forgotten)
        {
            if (sentence.Operation == Operation.Read)
            {
                NameOf(sentence);
            }
            else if (sentence.PhraseAt("role") is { } role && sentence.PhraseAt("protection") is { } wanted && AskedFor(wanted, Resolver.Role(role)) is { } protection)
            {
                _asked.Add(protection);
            }
            else if (sentence.Operation == Operation.DoCard)
            {
                Inherit(sentence);
            }
            else if (sentence.Operation == Operation.ForEach)
            {
                EachRound(sentence, () => Remember(sentence.ActionsAt("actions")));
            }
        }
    }

    private void Compile(Aside aside)
    {
        (_step, _person, _apart, _round) = (aside.Step, aside.Person, aside.Apart, aside.Round);
        _ops.Place(aside.Label);
        Compile(aside.Action, []);
        _apart = false;
        if (!Leaves(aside.Action))
        {
            _ops.Add(new CardOp.Jump(aside.Next) { Step = _step, Span = aside.Action.Span, Person = _person });
        }
    }

    private static bool Leaves(Sentence sentence) => sentence.Operation is Operation.Jump or Operation.JumpToEnd or Operation.NextRound or Operation.Stop;

    /// <summary>Where it goes on if not: at a step, at the end, or at an aside; at <paramref name="next"/> when the card does not say.</summary>
    private int Otherwise(Sentence sentence, int next)
    {
        if (sentence.Tail(Operation.IfNot)?.ActionsAt("action").FirstOrDefault() is not { } action)
        {
            return next;
        }

        switch (action.Operation)
        {
            case Operation.Jump or Operation.JumpToEnd when _apart:
                Found.Add(CardMessages.LeavesOthers(action.Span));
                return next;
            case Operation.Jump:
                return StepLabel(action.StepAt("step"));
            case Operation.JumpToEnd:
                return _endLabel;
            case Operation.NextRound:
                return NextRound(action);
            default:
                int label = _ops.NewLabel();
                _asides.Enqueue(new(label, next, action, _step, _person, _apart, _round));
                return label;
        }
    }

    private int StepLabel(Slot.StepNumber? step)
    {
        if (step is not null && _stepLabels.TryGetValue(step.Number, out int label))
        {
            return label;
        }

        if (step is { Number: > 0 })
        {
            Found.Add(CardMessages.NoSuchStep(step.Span, step.Number));
        }

        return _endLabel;
    }

    /// <summary>Puts down an operation that may go on elsewhere.</summary>
    private void Branch(Sentence sentence, Func<int, CardOp> op)
    {
        int next = _ops.NewLabel();
        int otherwise = Otherwise(sentence, next);
        _ops.Add(op(otherwise));
        _ops.Place(next);
    }

    private double Seconds(Sentence sentence, string gap)
    {
        if (sentence.AmountAt(gap) is not { Quantity.Unit: not null } amount)
        {
            return 0;
        }

        if (!(amount.Quantity.Si > 0))
        {
            Found.Add(CardMessages.NotPositive(amount.Span));
        }

        return amount.Quantity.Si;
    }

    /// <summary>What is done if not, placed behind the last step.</summary>
    private sealed record Aside(int Label, int Next, Sentence Action, int Step, Role? Person, bool Apart, Round Round);
}
