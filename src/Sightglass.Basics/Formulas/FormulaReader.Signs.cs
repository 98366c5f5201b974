namespace Sightglass.Basics.Formulas;

/// <summary>Spaces, signs and words between the parts.</summary>
internal sealed partial class FormulaReader
{
    private static readonly (string Word, FormulaOp Op)[] s_functions = [("min", FormulaOp.Min), ("max", FormulaOp.Max), ("abs", FormulaOp.Abs)];

    private static bool IsNameStart(char c) => char.IsLetterOrDigit(c);

    private void SkipSpace()
    {
        while (!AtEnd && char.IsWhiteSpace(text[_at]))
        {
            _at++;
        }
    }

    private bool IsJoiningWord(int at) => FormulaScan.HasWord(text, at, "and") || FormulaScan.HasWord(text, at, "or");

    /// <summary>An opening parenthesis follows: not a name but a function.</summary>
    private bool IsCall(int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at < text.Length && text[at] == '(';
    }

    private bool Take(char c)
    {
        SkipSpace();
        bool here = !AtEnd && text[_at] == c;
        _at += here ? 1 : 0;
        return here;
    }

    private bool TakeWord(string word)
    {
        SkipSpace();
        bool here = FormulaScan.HasWord(text, _at, word);
        _at += here ? word.Length : 0;
        return here;
    }

    /// <summary>One of two signs, each in all its spellings: × · for *, ÷ for /, − for -.</summary>
    private bool TakeSign(out char sign, char one, char other)
    {
        SkipSpace();
        sign = AtEnd ? '\0' : Plain(text[_at]);
        bool here = sign != '\0' && (sign == one || sign == other);
        _at += here ? 1 : 0;
        return here;
    }

    private static char Plain(char c) => c switch
    {
        '×' or '·' => '*',
        '÷' => '/',
        '−' => '-',
        _ => c,
    };

    private bool TakeComparison(out FormulaOp op)
    {
        SkipSpace();
        op = default;
        if (AtEnd || text[_at] is not ('<' or '>' or '≤' or '≥' or '=' or '≠' or '!'))
        {
            return false;
        }

        int start = _at;
        char c = text[_at++];
        bool equal = !AtEnd && text[_at] == '=';
        if (equal || (!AtEnd && c == '<' && text[_at] == '>'))
        {
            _at++;
        }

        if (c is '=' or '≠' or '!' || (_at - start == 2 && !equal))
        {
            messages.EqualSign(start, _at);
        }

        op = c switch
        {
            '<' => equal ? FormulaOp.LessOrEqual : FormulaOp.Less,
            '>' => equal ? FormulaOp.GreaterOrEqual : FormulaOp.Greater,
            '≤' => FormulaOp.LessOrEqual,
            _ => FormulaOp.GreaterOrEqual,
        };
        return true;
    }

    /// <summary>Reports what stands where an operator should, and moves past it.</summary>
    private void ReportLeftOver()
    {
        SkipSpace();
        if (AtEnd)
        {
            return;
        }

        int start = _at;
        bool word = FormulaScan.IsWordPart(text[_at]);
        _at = word ? FormulaScan.PhraseEnd(text, _at, _functions > 0) : _at + 1;
        if (_at < text.Length && char.IsLowSurrogate(text[_at]))
        {
            _at++;
        }

        messages.Unexpected(start, _at, text[start] == ')' ? "there is no `(` for it" : word ? "write an operator before it" : null);
        _ = TakeSign(out _, '+', '-') || TakeSign(out _, '*', '/') || TakeWord("and") || TakeWord("or") || TakeComparison(out _);
    }

    /// <summary>The word or sign before a place, for messages.</summary>
    private string Before(int at)
    {
        int end = Math.Min(at, text.Length);
        while (end > 0 && char.IsWhiteSpace(text[end - 1]))
        {
            end--;
        }

        int start = end;
        while (start > 0 && end - start < 20 && FormulaScan.IsWordPart(text[start - 1]))
        {
            start--;
        }

        start = start == end && start > 0 ? start - 1 : start;
        return end == 0 ? "its start" : $"`{text[start..end]}`";
    }
}
