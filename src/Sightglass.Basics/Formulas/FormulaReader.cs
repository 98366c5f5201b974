using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>
/// Reads one formula from left to right by the levels of its grammar: or, and, not, comparison, sum, product, sign, whole.
/// After an error it goes on at the next operator, so that one reading finds as much as it can.
/// </summary>
internal sealed partial class FormulaReader(
    string text, INameScope scope, FormulaProgramBuilder program, FormulaChecks checks, FormulaMessages messages)
{
    private int _at;
    private int _nesting;
    private int _functions;

    public FormulaNode ReadAll()
    {
        SkipSpace();
        if (AtEnd)
        {
            messages.Empty();
            return FormulaNode.Unknown(0, text.Length);
        }

        FormulaNode node = ReadOr();
        while (!AtEnd && !messages.IsFull)
        {
            ReportLeftOver();
            SkipSpace();
            if (!AtEnd)
            {
                ReadOr();
            }
        }

        return node;
    }

    private bool AtEnd => _at >= text.Length;

    private FormulaNode ReadOr()
    {
        FormulaNode a = ReadAnd();
        while (TakeWord("or"))
        {
            FormulaNode b = ReadAnd();
            program.Operation(FormulaOp.Or);
            a = checks.Joined(a, b);
        }

        return a;
    }

    private FormulaNode ReadAnd()
    {
        FormulaNode a = ReadNot();
        while (TakeWord("and"))
        {
            FormulaNode b = ReadNot();
            program.Operation(FormulaOp.And);
            a = checks.Joined(a, b);
        }

        return a;
    }

    private FormulaNode ReadNot()
    {
        SkipSpace();
        int start = _at;
        if (!FormulaScan.HasWord(text, _at, "not") || FormulaScan.TryName(text, _at, scope, out _, out _))
        {
            return ReadComparison();
        }

        _at += 3;
        if (!Enter(start))
        {
            return FormulaNode.Unknown(start, _at);
        }

        FormulaNode a = checks.AsCondition(ReadNot());
        _nesting--;
        program.Operation(FormulaOp.Not);
        return a with { Start = start };
    }

    private FormulaNode ReadComparison()
    {
        FormulaNode a = ReadSum();
        int count = 0;
        while (TakeComparison(out FormulaOp op))
        {
            FormulaNode b = ReadSum();
            program.Operation(op);
            if (++count == 2)
            {
                messages.Chained(a.Start, b.End);
            }

            a = count == 1 ? checks.Compared(a, b) : FormulaNode.Unknown(a.Start, b.End);
        }

        return a;
    }

    private FormulaNode ReadSum()
    {
        FormulaNode a = ReadProduct();
        while (TakeSign(out char sign, '+', '-'))
        {
            FormulaNode b = ReadProduct();
            program.Operation(sign == '+' ? FormulaOp.Add : FormulaOp.Subtract);
            a = checks.Sum(a, b, sign == '-');
        }

        return a;
    }

    private FormulaNode ReadProduct()
    {
        FormulaNode a = ReadSigned();
        while (TakeSign(out char sign, '*', '/'))
        {
            FormulaNode b = ReadSigned();
            program.Operation(sign == '*' ? FormulaOp.Multiply : FormulaOp.Divide);
            a = checks.Product(a, b, sign == '/');
        }

        return a;
    }

    private FormulaNode ReadSigned()
    {
        SkipSpace();
        int start = _at;
        if (!TakeSign(out char sign, '-', '+'))
        {
            return ReadWhole();
        }

        SkipSpace();
        if (sign == '-' && NumberReader.StartsNumber(text, _at) && !FormulaScan.TryName(text, _at, scope, out _, out _))
        {
            return ReadNumber(start, negative: true);
        }

        if (!Enter(start))
        {
            return FormulaNode.Unknown(start, _at);
        }

        FormulaNode a = ReadSigned();
        _nesting--;
        if (sign == '-')
        {
            program.Operation(FormulaOp.Negate);
            return checks.Negated(a, start);
        }

        return checks.AsValue(a) with { Start = start };
    }

    private bool Enter(int start)
    {
        if (++_nesting <= FormulaParser.DeepestNesting)
        {
            return true;
        }

        messages.TooDeep(start, text.Length, FormulaParser.DeepestNesting);
        _nesting--;
        _at = text.Length;
        return false;
    }
}
