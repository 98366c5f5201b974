using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tapes;

/// <summary>
/// Arithmetic in a row, each operation once however often it was asked for: run for eight lanes at once, with the bits of the arithmetic that was noted.
/// Immutable; made by <see cref="TapeWriter"/>; run without allocation in a room of one place for each step.
/// </summary>
public sealed class Tape
{
    private readonly TapeStep[] _steps;
    private readonly double[] _constants;
    private readonly double[][] _tables;

    internal Tape(TapeStep[] steps, double[] constants, double[][] tables) => (_steps, _constants, _tables) = (steps, constants, tables);

    /// <summary>Steps, leaves and constants among them.</summary>
    public int Length => _steps.Length;

    /// <summary>Whether a step is a leaf or a constant, so that there is nothing to work out.</summary>
    public bool IsGiven(int step) => _steps[step].Op is TapeOp.Leaf or TapeOp.Constant;

    /// <summary>Marks the steps of an operation's operands.</summary>
    /// <param name="step">Its number.</param>
    /// <param name="marks">As long as the tape.</param>
    public void MarkOperands(int step, Span<bool> marks)
    {
        TapeStep s = _steps[step];
        int operands = OperandsOf(s.Op);
        if (operands > 0)
        {
            marks[s.A] = true;
        }

        if (operands > 1)
        {
            marks[s.B] = true;
        }

        if (operands > 2)
        {
            marks[s.C] = true;
        }
    }

    /// <summary>Whether a mark stands at one of an operation's operands.</summary>
    public bool AnyOperand(int step, ReadOnlySpan<bool> marks)
    {
        TapeStep s = _steps[step];
        int operands = OperandsOf(s.Op);
        return (operands > 0 && marks[s.A]) || (operands > 1 && marks[s.B]) || (operands > 2 && marks[s.C]);
    }

    /// <summary>Puts the constants into a room, for all runs.</summary>
    /// <param name="room">As long as the tape.</param>
    public void Prepare(Span<Lanes> room)
    {
        for (int i = 0; i < _steps.Length; i++)
        {
            if (_steps[i].Op == TapeOp.Constant)
            {
                room[i] = Lanes.Of(_constants[_steps[i].A]);
            }
        }
    }

    /// <summary>Works out some steps of which what they need is in the room.</summary>
    /// <param name="steps">Their numbers, rising; neither leaves nor constants.</param>
    /// <param name="room">As long as the tape, and prepared.</param>
    [SkipLocalsInit]
    public void Run(ReadOnlySpan<int> steps, Span<Lanes> room)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(room.Length, _steps.Length);
        ref Lanes first = ref MemoryMarshal.GetReference(room);
        ref TapeStep tape = ref MemoryMarshal.GetArrayDataReference(_steps);
        foreach (int i in steps)
        {
            ref TapeStep step = ref Unsafe.Add(ref tape, i);
            ref Lanes a = ref Unsafe.Add(ref first, step.A);
            Unsafe.Add(ref first, i) = step.Op == TapeOp.Lookup
                ? Lanes.Lookup(_tables[step.B], a)
                : Apply(step.Op, a, Unsafe.Add(ref first, step.B), Unsafe.Add(ref first, step.C));
        }
    }

    private static int OperandsOf(TapeOp op) => op switch
    {
        TapeOp.Leaf or TapeOp.Constant => 0,
        TapeOp.Negate or TapeOp.Abs or TapeOp.Sqrt or TapeOp.Floor or TapeOp.CbrtSeed or TapeOp.ExponentOf or TapeOp.SignificandOf or TapeOp.Lookup => 1,
        TapeOp.Fma or TapeOp.Select => 3,
        _ => 2,
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Apply<T>(TapeOp op, T a, T b, T c)
        where T : struct, IReal<T> => op switch
        {
            TapeOp.Add => a + b,
            TapeOp.Subtract => a - b,
            TapeOp.Multiply => a * b,
            TapeOp.Divide => a / b,
            TapeOp.Negate => -a,
            TapeOp.Sqrt => T.Sqrt(a),
            TapeOp.Abs => T.Abs(a),
            TapeOp.Fma => T.Fma(a, b, c),
            TapeOp.Min => T.Min(a, b),
            TapeOp.Max => T.Max(a, b),
            TapeOp.Less => T.Less(a, b),
            TapeOp.LessOrEqual => T.LessOrEqual(a, b),
            TapeOp.Select => T.Select(a, b, c),
            TapeOp.And => T.And(a, b),
            TapeOp.Or => T.Or(a, b),
            TapeOp.Floor => T.Floor(a),
            TapeOp.CbrtSeed => T.CbrtSeed(a),
            TapeOp.ScaleByPowerOfTwo => T.ScaleByPowerOfTwo(a, b),
            TapeOp.ExponentOf => T.ExponentOf(a),
            TapeOp.SignificandOf => T.SignificandOf(a),
            _ => throw new ArgumentOutOfRangeException(nameof(op), op, "Not an operation on numbers."),
        };
}
