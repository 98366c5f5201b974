using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;

namespace Sightglass.World.Runs;

/// <summary>
/// Which operations of a program have somebody look at the machine when they end, or when the next begins. The others (walking, turning, speaking)
/// go on without its state at that moment being worked out.
/// </summary>
internal sealed class ProgramLooks
{
    private readonly bool[] _beginning;
    private readonly bool[] _ending;

    /// <param name="program">Of one binding.</param>
    /// <param name="injures">Whether touching an item may injure under a condition of the machine.</param>
    public ProgramLooks(CardProgram program, Func<Item, bool> injures)
    {
        ImmutableArray<CardOp> ops = program.Ops;
        _beginning = new bool[ops.Length];
        _ending = new bool[ops.Length];
        for (int i = 0; i < ops.Length; i++)
        {
            _beginning[i] = Begins(ops, i, injures);
            _ending[i] = !EndsBlind(ops[i]) || i + 1 >= ops.Length || Begins(ops, i + 1, injures);
        }
    }

    /// <param name="next">Which operation.</param>
    /// <param name="halfway">Whether it has begun.</param>
    public bool Needed(int next, bool halfway) => halfway ? _ending[next] : _beginning[next];

    private static bool EndsBlind(CardOp op) =>
        op is CardOp.Go or CardOp.Set or CardOp.WaitFor or CardOp.WaitUntil or CardOp.Hold or CardOp.Tell or CardOp.Call;

    private static bool Begins(ImmutableArray<CardOp> ops, int at, Func<Item, bool> injures)
    {
        for (int jumps = 0; jumps < ops.Length; jumps++)
        {
            if (ops[at] is not CardOp.Jump jump)
            {
                return ops[at] switch
                {
                    CardOp.WaitUntil or CardOp.Hold { Until: not null } or CardOp.Done or CardOp.Together or CardOp.Join => true,
                    CardOp.Set set => set.Item.Candidates.Any(injures),
                    CardOp.Hold hold => hold.Item.Candidates.Any(injures),
                    _ => false,
                };
            }

            at = jump.Target;
        }

        return true;
    }
}
