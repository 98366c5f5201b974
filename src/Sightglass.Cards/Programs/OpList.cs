using System.Collections.Immutable;

namespace Sightglass.Cards.Programs;

/// <summary>Operations while they are put down: jumps name labels, which become indices at the end.</summary>
internal sealed class OpList
{
    private readonly List<CardOp> _ops = [];
    private readonly List<int> _labels = [];

    public int Count => _ops.Count;

    public void Add(CardOp op) => _ops.Add(op);

    /// <summary>A label that is not placed yet.</summary>
    public int NewLabel()
    {
        _labels.Add(-1);
        return _labels.Count - 1;
    }

    /// <summary>Places a label before the next operation.</summary>
    public void Place(int label) => _labels[label] = _ops.Count;

    /// <summary>The operations with indices for labels.</summary>
    public ImmutableArray<CardOp> Build() => [.. _ops.Select(Resolve)];

    private CardOp Resolve(CardOp op) => op switch
    {
        CardOp.Check check => check with { Else = _labels[check.Else] },
        CardOp.Look look => look with { Else = _labels[look.Else] },
        CardOp.WaitUntil wait => wait with { Else = _labels[wait.Else] },
        CardOp.Hold hold => hold with { Else = _labels[hold.Else] },
        CardOp.Ask ask => ask with { Else = _labels[ask.Else] },
        CardOp.If branch => branch with { Else = _labels[branch.Else] },
        CardOp.Jump jump => jump with { Target = _labels[jump.Target] },
        CardOp.Repeat repeat => repeat with { Else = _labels[repeat.Else], Back = _labels[repeat.Back] },
        _ => op,
    };
}
