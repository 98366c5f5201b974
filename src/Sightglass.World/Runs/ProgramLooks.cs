using System.Collections.Immutable;
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

    public ProgramLooks(CardProgram program)
    {
        ImmutableArray<CardOp> ops = program.Ops;
        _beginning = new bool[ops.Length];
        _ending = new bool[ops.Length];
        for (int i = 0; i < ops.Length; i++)
        {
            _beginning[i] = Begins(ops, i);
            _ending[i] = !EndsBlind(ops[i]) || i + 1 >= ops.Length || Begins(ops, i + 1);
        }
    }

    /// <param name="next">Which operation.</param>
    /// <param name="halfway">Whether it has begun.</param>
    public bool Needed(int next, bool halfway) => halfway ? _ending[next] : _beginning[next];

    private static bool EndsBlind(CardOp op) =>
        op is CardOp.Go or CardOp.Set or CardOp.WaitFor or CardOp.WaitUntil or CardOp.Hold or CardOp.Tell or CardOp.GiveBack or CardOp.LockAndTag;

    private static bool Begins(ImmutableArray<CardOp> ops, int at)
    {
        for (int jumps = 0; jumps < ops.Length; jumps++)
        {
            if (ops[at] is not CardOp.Jump jump)
            {
                return ops[at] is CardOp.WaitUntil or CardOp.Hold { Until: not null } or CardOp.Done;
            }

            at = jump.Target;
        }

        return true;
    }
}
