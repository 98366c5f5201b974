using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>Operations while they are put down: jumps name labels, which become indices at the end.</summary>
internal sealed class OpList
{
    private readonly List<CardOp> _ops = [];
    private readonly List<int> _labels = [];

    public int Count => _ops.Count;

    /// <summary>How many counters the operations use.</summary>
    public int Counters { get; private set; }

    public int NewCounter() => Counters++;

    /// <summary>Marks the operations from an index on as those of a card that is called.</summary>
    /// <param name="from">Index of the first.</param>
    /// <param name="title">Of that card.</param>
    /// <param name="step">The step that calls.</param>
    /// <param name="at">The sentence that calls.</param>
    /// <param name="person">Who does what that card gives to nobody in particular.</param>
    public void MarkCalled(int from, string title, int step, Span at, Role? person)
    {
        for (int i = from; i < _ops.Count; i++)
        {
            CardOp op = _ops[i];
            CalledStep called = op.Called is { } deeper ? deeper with { Depth = deeper.Depth + 1, At = at } : new(title, op.Step, 1, at);
            _ops[i] = op with { Step = step, Person = op.Person ?? person, Called = called };
        }
    }

    public void Add(CardOp op) => _ops.Add(op);

    /// <summary>Takes away the operations from an index on, none of which is a target.</summary>
    public ImmutableArray<CardOp> TakeFrom(int from)
    {
        ImmutableArray<CardOp> taken = [.. _ops.Skip(from)];
        _ops.RemoveRange(from, taken.Length);
        return taken;
    }

    /// <summary>A label that is not placed yet.</summary>
    public int NewLabel()
    {
        _labels.Add(-1);
        return _labels.Count - 1;
    }

    /// <summary>Places a label before the next operation.</summary>
    public void Place(int label) => _labels[label] = _ops.Count;

    /// <summary>Whether an operation from an index on is done by somebody else than the person given.</summary>
    public bool AnyByOther(int from, Role? person) => _ops.Skip(from).Any(o => o.Person?.Name != person?.Name);

    /// <summary>The operations with indices for labels.</summary>
    public ImmutableArray<CardOp> Build() => [.. _ops.Select(Resolve)];

    private CardOp Resolve(CardOp op) => op switch
    {
        CardOp.Check check => check with { Else = _labels[check.Else] },
        CardOp.Look look => look with { Else = _labels[look.Else] },
        CardOp.WaitUntil wait => wait with { Else = _labels[wait.Else] },
        CardOp.Hold hold => hold with { Else = _labels[hold.Else] },
        CardOp.Ask ask => ask with { Else = _labels[ask.Else] },
        CardOp.Request request => request with { Else = _labels[request.Else] },
        CardOp.If branch => branch with { Else = _labels[branch.Else] },
        CardOp.Together together => together with { Branches = [.. together.Branches.Select(b => _labels[b])], Next = _labels[together.Next] },
        CardOp.Jump jump => jump with { Target = _labels[jump.Target] },
        CardOp.Repeat repeat => repeat with { Else = _labels[repeat.Else], Back = _labels[repeat.Back] },
        _ => op,
    };
}
