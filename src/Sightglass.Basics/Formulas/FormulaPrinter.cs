using System.Globalization;

namespace Sightglass.Basics.Formulas;

/// <summary>Writes a formula's program as text, with no more parentheses than it needs.</summary>
internal static class FormulaPrinter
{
    private const int OrLevel = 1;
    private const int AndLevel = 2;
    private const int NotLevel = 3;
    private const int ComparisonLevel = 4;
    private const int SumLevel = 5;
    private const int ProductLevel = 6;
    private const int UnaryLevel = 7;
    private const int WholeLevel = 8;

    public static string Print(Formula formula)
    {
        Stack<(string Text, int Level)> done = new();
        foreach (FormulaStep step in formula.Steps)
        {
            done.Push(step.Takes switch
            {
                0 => Operand(formula, step),
                1 => Unary(step.Op, done.Pop()),
                _ => Binary(step.Op, done.Pop(), done.Pop()),
            });
        }

        return done.Pop().Text;
    }

    private static (string, int) Operand(Formula formula, FormulaStep step)
    {
        if (step.Op == FormulaOp.Name)
        {
            return (formula.NamesUsed[step.Index].Name, WholeLevel);
        }

        FormulaLiteral literal = formula.Literals[step.Index];
        return (Literal(literal), UnaryLevel);
    }

    private static (string, int) Unary(FormulaOp op, (string Text, int Level) a) => op switch
    {
        FormulaOp.Abs => ($"abs({a.Text})", WholeLevel),
        FormulaOp.Not => ($"not {Within(a, NotLevel)}", NotLevel),
        _ => ($"-{Within(a, WholeLevel)}", UnaryLevel),
    };

    private static (string, int) Binary(FormulaOp op, (string Text, int Level) b, (string Text, int Level) a) => op switch
    {
        FormulaOp.Min => ($"min({a.Text}, {b.Text})", WholeLevel),
        FormulaOp.Max => ($"max({a.Text}, {b.Text})", WholeLevel),
        FormulaOp.Add => Joined(a, "+", b, SumLevel),
        FormulaOp.Subtract => Joined(a, "-", b, SumLevel),
        FormulaOp.Multiply => Joined(a, "*", b, ProductLevel),
        FormulaOp.Divide => Joined(a, "/", b, ProductLevel),
        FormulaOp.Less => Compared(a, "<", b),
        FormulaOp.LessOrEqual => Compared(a, "<=", b),
        FormulaOp.Greater => Compared(a, ">", b),
        FormulaOp.GreaterOrEqual => Compared(a, ">=", b),
        FormulaOp.And => Joined(a, "and", b, AndLevel),
        _ => Joined(a, "or", b, OrLevel),
    };

    private static (string, int) Joined((string, int) a, string sign, (string, int) b, int level) =>
        ($"{Within(a, level)} {sign} {Within(b, level + 1)}", level);

    private static (string, int) Compared((string, int) a, string sign, (string, int) b) =>
        ($"{Within(a, SumLevel)} {sign} {Within(b, SumLevel)}", ComparisonLevel);

    private static string Within((string Text, int Level) part, int least) => part.Level >= least ? part.Text : $"({part.Text})";

    private static string Literal(FormulaLiteral literal)
    {
        string number = literal.Written.ToString("R", CultureInfo.InvariantCulture);
        return literal.Unit.Symbol == "1" ? number : $"{number} {literal.Unit.Symbol}";
    }
}
