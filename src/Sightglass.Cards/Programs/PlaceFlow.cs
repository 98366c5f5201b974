using System.Collections.Immutable;

namespace Sightglass.Cards.Programs;

/// <summary>
/// Where the person of each operation may stand when it is done, worked out over all ways through the program. The start is not known:
/// it is the empty name.
/// </summary>
public sealed class PlaceFlow
{
    /// <summary>The place of somebody who has not been sent anywhere.</summary>
    public const string Unknown = "";

    private readonly ImmutableArray<CardOp> _ops;
    private readonly ImmutableHashSet<(string Person, string Place)>?[] _before;

    private PlaceFlow(ImmutableArray<CardOp> ops)
    {
        _ops = ops;
        _before = new ImmutableHashSet<(string, string)>?[ops.Length];
    }

    public static PlaceFlow Of(ImmutableArray<CardOp> ops)
    {
        PlaceFlow flow = new(ops);
        flow.Run();
        return flow;
    }

    /// <summary>Whether any way through the program comes to the operation.</summary>
    public bool IsReached(int op) => _before[op] is not null;

    /// <summary>Where its person may stand before the operation, in order of names; empty when it is not reached.</summary>
    public ImmutableArray<string> PlacesAt(int op)
    {
        string person = PersonOf(_ops[op]);
        return [.. (_before[op] ?? []).Where(p => p.Person == person).Select(p => p.Place).Order(StringComparer.Ordinal)];
    }

    /// <summary>The indices at which the program may go on after an operation.</summary>
    public static ImmutableArray<int> After(CardOp op, int index)
    {
        ArgumentNullException.ThrowIfNull(op);
        return op switch
        {
            CardOp.Jump jump => [jump.Target],
            CardOp.Check check => [index + 1, check.Else],
            CardOp.Look look => [index + 1, look.Else],
            CardOp.WaitUntil wait => [index + 1, wait.Else],
            CardOp.Hold hold => [index + 1, hold.Else],
            CardOp.Ask ask => [index + 1, ask.Else],
            CardOp.Request request => [index + 1, request.Else],
            CardOp.If branch => [index + 1, branch.Else],
            CardOp.Repeat repeat => [index + 1, repeat.Back, repeat.Else],
            CardOp.Stop or CardOp.Done => [],
            _ => [index + 1],
        };
    }

    private static string PersonOf(CardOp op) => op.Person?.Name ?? "";

    private void Run()
    {
        if (_ops.IsEmpty)
        {
            return;
        }

        Queue<int> open = new([0]);
        _before[0] = [.. _ops.Select(o => (PersonOf(o), Unknown))];
        while (open.TryDequeue(out int at))
        {
            ImmutableHashSet<(string, string)> after = Apply(_ops[at], _before[at]!);
            foreach (int next in After(_ops[at], at))
            {
                ImmutableHashSet<(string, string)> joined = _before[next] is { } known ? known.Union(after) : after;
                if (_before[next] is null || joined.Count > _before[next]!.Count)
                {
                    _before[next] = joined;
                    open.Enqueue(next);
                }
            }
        }
    }

    private static ImmutableHashSet<(string Person, string Place)> Apply(CardOp op, ImmutableHashSet<(string Person, string Place)> before)
    {
        if (op is CardOp.Request request)
        {
            // Whoever is asked may have walked to the control, or not.
            return before.Union(request.What.Item.Candidates.SelectMany(i => i.Places).Select(place => (request.Role.Name, place)));
        }

        if (op is not CardOp.Go go)
        {
            return before;
        }

        string person = PersonOf(op);
        return before.Except(before.Where(p => p.Person == person)).Add((person, go.Place.Name));
    }
}
