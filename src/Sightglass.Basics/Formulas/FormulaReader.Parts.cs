using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>The smallest parts: numbers, names, functions, parentheses.</summary>
internal sealed partial class FormulaReader
{
    private FormulaNode ReadWhole()
    {
        SkipSpace();
        int start = _at;
        if (AtEnd)
        {
            return Missing(start);
        }

        char c = text[_at];
        if (c == '(')
        {
            return ReadParentheses();
        }

        if (IsNameStart(c) && FormulaScan.TryName(text, _at, scope, out FormulaName name, out int end) && !IsCall(end))
        {
            return ReadName(name, end);
        }

        if (NumberReader.StartsNumber(text, _at))
        {
            return ReadNumber(start, negative: false);
        }

        return FormulaScan.IsWordStart(c) && !IsJoiningWord(_at) ? ReadCallOrUnknown() : Missing(start);
    }

    private FormulaNode ReadName(in FormulaName name, int end)
    {
        int start = _at;
        _at = end;
        program.Name(name);
        int whole = FormulaScan.PhraseEnd(text, start, _functions > 0);
        if (whole > end && WordFollows())
        {
            messages.UnknownName(start, whole, scope);
            _at = whole;
            return FormulaNode.Unknown(start, whole);
        }

        return name.IsCondition ? FormulaNode.Condition(name.Dimension, start, end) : FormulaNode.Value(name.Dimension, start, end);
    }

    /// <summary>A word right after what was read, such as the <c>lft</c> of a name known without it.</summary>
    private bool WordFollows()
    {
        int i = _at;
        while (i < text.Length && char.IsWhiteSpace(text[i]))
        {
            i++;
        }

        return i < text.Length && FormulaScan.IsWordPart(text[i]) && !IsJoiningWord(i);
    }

    private FormulaNode ReadNumber(int start, bool negative)
    {
        int from = _at;
        bool single = NumberReader.VulgarFraction(text[_at]) > 0;
        double value = NumberReader.VulgarFraction(text[_at]);
        if (single)
        {
            _at++;
        }
        else
        {
            NumberReader.TryReadDecimal(text, ref _at, out value);
            ReadFraction(from, ref value);
        }

        FormulaNode? wrong = double.IsFinite(value) ? null : TooLarge(start);
        int afterNumber = _at;
        SkipSpace();
        Unit unit = UnitTable.One;
        if (!AtEnd && !IsJoiningWord(_at) && (FormulaScan.IsWordStart(text[_at]) || text[_at] is '%' or '°'))
        {
            if (!FormulaScan.TryUnit(text, _at, out unit, out int end))
            {
                return UnknownUnit(start);
            }

            _at = end;
            afterNumber = end;
        }

        _at = afterNumber;
        return wrong ?? Literal(negative ? -value : value, unit, start);
    }

    private FormulaNode Literal(double value, Unit unit, int start)
    {
        if (unit.IsAbsolute)
        {
            messages.AbsolutePressure(start, _at, unit.Symbol);
            return FormulaNode.Unknown(start, _at);
        }

        if (!double.IsFinite(unit.ToSi(value)))
        {
            return TooLarge(start);
        }

        program.Literal(new(value, unit));
        bool plain = ReferenceEquals(unit, UnitTable.One);
        return FormulaNode.Value(unit.Dimension, start, _at) with
        {
            IsZero = value == 0 && plain,
            Level = unit.IsScale ? TemperatureLevel.Scale : TemperatureLevel.Unknown,
        };
    }

    /// <summary><c>1 1/4 in</c>, <c>1¼ in</c>, and tight fractions below one before a unit.</summary>
    private void ReadFraction(int from, ref double value)
    {
        int at = _at;
        double whole = value;
        bool mixed = at < text.Length && text[at] is not '/';
        if (!NumberReader.TryReadFraction(text, ref at, text.AsSpan(from, _at - from), ref whole, out double below))
        {
            return;
        }

        if (below == 0)
        {
            messages.DividesByZero(from, at);
        }

        if (mixed || (whole < 1 && UnitFollows(at)))
        {
            (_at, value) = (at, below == 0 ? value : whole);
        }
    }

    private bool UnitFollows(int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at < text.Length && !IsJoiningWord(at) && FormulaScan.TryUnit(text, at, out _, out _);
    }

    private FormulaNode UnknownUnit(int start)
    {
        int word = _at;
        _at = FormulaScan.UnitEnd(text, _at);
        messages.UnknownUnit(word, _at);
        return FormulaNode.Unknown(start, _at);
    }

    private FormulaNode TooLarge(int start)
    {
        messages.NumberTooLarge(start, _at);
        return FormulaNode.Unknown(start, _at);
    }

    private FormulaNode ReadParentheses()
    {
        int open = _at;
        if (!Enter(open))
        {
            return FormulaNode.Unknown(open, _at);
        }

        _at++;
        int functions = _functions;
        _functions = 0;
        FormulaNode inner = ReadOr();
        _functions = functions;
        _nesting--;
        Close(open);
        return inner with { Start = open, End = _at, IsZero = false };
    }

    private FormulaNode ReadCallOrUnknown()
    {
        foreach ((string word, FormulaOp op) in s_functions)
        {
            if (FormulaScan.HasWord(text, _at, word) && IsCall(_at + word.Length))
            {
                return ReadCall(word, op);
            }
        }

        int start = _at;
        _at = FormulaScan.PhraseEnd(text, _at, _functions > 0);
        messages.UnknownName(start, _at, scope);
        return FormulaNode.Unknown(start, _at);
    }

    private FormulaNode ReadCall(string word, FormulaOp op)
    {
        int start = _at;
        if (!Enter(start))
        {
            return FormulaNode.Unknown(start, _at);
        }

        _at += word.Length;
        SkipSpace();
        int open = _at++;
        _functions++;
        FormulaNode whole = checks.AsValue(ReadOr());
        int count = 1;
        while (Take(','))
        {
            FormulaNode next = ReadOr();
            program.Operation(op == FormulaOp.Abs ? FormulaOp.Max : op);
            whole = checks.OneOf(whole, next);
            count++;
        }

        _functions--;
        _nesting--;
        Close(open);
        if (op == FormulaOp.Abs ? count != 1 : count < 2)
        {
            messages.WrongCount(word, start, _at);
        }

        if (op == FormulaOp.Abs)
        {
            program.Operation(FormulaOp.Abs);
        }

        return whole with { Start = start, End = _at };
    }

    private void Close(int open)
    {
        while (!AtEnd && text[_at] != ')' && !messages.IsFull)
        {
            ReportLeftOver();
            SkipSpace();
            if (!AtEnd && text[_at] != ')')
            {
                ReadOr();
            }
        }

        if (!Take(')'))
        {
            messages.MissingClose(open);
        }
    }

    /// <summary>Nothing to read where a value should stand.</summary>
    private FormulaNode Missing(int start)
    {
        messages.MissingOperand(start, Before(start));
        return FormulaNode.Unknown(start, start);
    }
}
