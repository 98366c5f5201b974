using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>
/// A checked expression over named values: a value in SI, or a condition whose value is a margin, true when ≥ 0.
/// Immutable; made by <see cref="FormulaParser"/>; evaluated without allocation, for one number or eight lanes with the same bits.
/// </summary>
/// <remarks>
/// Margins: a ≤ b and a &lt; b give b − a, a ≥ b and a &gt; b give a − b, <c>and</c> is the smaller, <c>or</c> the larger, <c>not</c> the
/// negative. So a strict comparison holds at equality too, and <c>not</c> of a condition at its edge holds as well: measured values are never exact.
/// A margin that is not a number is not ≥ 0 and does not hold: <c>and</c> hands it on, <c>or</c> passes it over.
/// </remarks>
public sealed class Formula
{
    private readonly FormulaStep[] _steps;
    private readonly double[] _constants;
    private readonly int[] _ids;
    private readonly FormulaLiteral[] _literals;
    private readonly int _depth;

    internal Formula(string text, Dimension dimension, bool isCondition, FormulaProgram program)
    {
        (Text, Dimension, IsCondition) = (text, dimension, isCondition);
        NamesUsed = program.Names;
        _steps = program.Steps;
        _literals = program.Literals;
        _constants = Array.ConvertAll(program.Literals, l => l.Si);
        _ids = [.. program.Names.Select(n => n.Id)];
        _depth = program.Depth;
    }

    /// <summary>As written.</summary>
    public string Text { get; }

    /// <summary>What the value measures; for a condition what its margin measures, a plain number where margins of several kinds meet.</summary>
    public Dimension Dimension { get; }

    public bool IsCondition { get; }

    /// <summary>Each name once, in the order of first use.</summary>
    public ImmutableArray<FormulaName> NamesUsed { get; }

    /// <summary>True when no name is used.</summary>
    public bool IsConstant => NamesUsed.IsEmpty;

    internal ReadOnlySpan<FormulaStep> Steps => _steps;

    internal ReadOnlySpan<FormulaLiteral> Literals => _literals;

    /// <summary>The value in SI, or the margin.</summary>
    /// <param name="values">Gives the values of <see cref="NamesUsed"/> by their ids.</param>
    [SkipLocalsInit]
    public T Evaluate<T, TValues>(ref TValues values)
        where T : struct, IReal<T>
        where TValues : IFormulaValues<T>, allows ref struct
    {
        if (_depth <= SmallStack<T>.Size)
        {
            Unsafe.SkipInit(out SmallStack<T> small);
            return Run<T, TValues>(small, ref values);
        }

        return EvaluateDeep<T, TValues>(ref values);
    }

    /// <summary>The formula in one standard spelling: parsed again it is the same formula.</summary>
    public string ToStandardText() => FormulaPrinter.Print(this);

    public override string ToString() => Text;

    [SkipLocalsInit]
    private T EvaluateDeep<T, TValues>(ref TValues values)
        where T : struct, IReal<T>
        where TValues : IFormulaValues<T>, allows ref struct
    {
        Unsafe.SkipInit(out LargeStack<T> large);
        return Run<T, TValues>(large, ref values);
    }

    private T Run<T, TValues>(scoped Span<T> stack, ref TValues values)
        where T : struct, IReal<T>
        where TValues : IFormulaValues<T>, allows ref struct
    {
        int top = -1;
        foreach (FormulaStep step in _steps)
        {
            switch (step.Op)
            {
                case FormulaOp.Constant:
                    stack[++top] = T.Of(_constants[step.Index]);
                    break;
                case FormulaOp.Name:
                    stack[++top] = values.ValueOf(_ids[step.Index]);
                    break;
                case FormulaOp.Negate or FormulaOp.Not:
                    stack[top] = -stack[top];
                    break;
                case FormulaOp.Abs:
                    stack[top] = T.Abs(stack[top]);
                    break;
                default:
                    top--;
                    stack[top] = Combine(step.Op, stack[top], stack[top + 1]);
                    break;
            }
        }

        return stack[0];
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Combine<T>(FormulaOp op, T a, T b)
        where T : struct, IReal<T> => op switch
        {
            FormulaOp.Add => a + b,
            FormulaOp.Subtract or FormulaOp.Greater or FormulaOp.GreaterOrEqual => a - b,
            FormulaOp.Less or FormulaOp.LessOrEqual => b - a,
            FormulaOp.Multiply => a * b,
            FormulaOp.Divide => a / b,
            FormulaOp.Min or FormulaOp.And => T.Select(T.LessOrEqual(a, a), T.Min(a, b), a),
            FormulaOp.Max => T.Select(T.LessOrEqual(a, a), T.Max(a, b), a),
            _ => T.Select(T.LessOrEqual(b, b), T.Max(a, b), a),
        };
}
