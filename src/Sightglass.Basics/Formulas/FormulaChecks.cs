using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Formulas;

/// <summary>Says what a part is made of its parts, and reports what does not fit.</summary>
internal sealed class FormulaChecks(FormulaMessages messages)
{
    private const int HighestPower = 30;

    public void Whole(FormulaNode node, FormulaKind expected)
    {
        if (node.IsUnknown)
        {
            return;
        }

        if (node.Sort == NodeSort.Condition)
        {
            if (!expected.TakesConditions)
            {
                messages.NotAValue(node);
            }
        }
        else if (!expected.TakesValues)
        {
            messages.NotACondition(node);
        }
        else if (expected.Dimension is { } d && d != node.Dimension && !node.IsZero)
        {
            messages.WrongKind(node, d);
        }
    }

    /// <summary>The part as a value; unknown (reported) where it is a condition.</summary>
    public FormulaNode AsValue(FormulaNode node)
    {
        if (node.Sort != NodeSort.Condition)
        {
            return node;
        }

        messages.NotAValue(node);
        return FormulaNode.Unknown(node.Start, node.End);
    }

    /// <summary>The part as a condition; unknown (reported) where it is a value.</summary>
    public FormulaNode AsCondition(FormulaNode node)
    {
        if (node.Sort != NodeSort.Value)
        {
            return node;
        }

        messages.NotACondition(node);
        return FormulaNode.Unknown(node.Start, node.End);
    }

    public FormulaNode Negated(FormulaNode a, int start)
    {
        a = WithoutScale(AsValue(a), "negated");
        return a with { Start = start };
    }

    public FormulaNode Sum(FormulaNode a, FormulaNode b, bool minus)
    {
        (a, b) = (AsValue(a), AsValue(b));
        TemperatureLevel level = TemperatureLevel.Unknown;
        if (!minus)
        {
            (a, b) = (WithoutScale(a, "added"), WithoutScale(b, "added"));
        }
        else if (a.Dimension == Dimension.Kelvin && (a.Level == TemperatureLevel.Scale || b.Level == TemperatureLevel.Scale || (a.Level | b.Level) == 0))
        {
            level = TemperatureLevel.Difference;
        }

        FormulaNode whole = minus ? Alike("subtract", b, a, "from", a.Start, b.End) : Alike("add", a, b, "and", a.Start, b.End);
        return whole with { Level = level, IsZero = false };
    }

    public FormulaNode Product(FormulaNode a, FormulaNode b, bool divide)
    {
        (a, b) = (WithoutScale(AsValue(a), "multiplied or divided"), WithoutScale(AsValue(b), "multiplied or divided"));
        if (a.IsUnknown || b.IsUnknown)
        {
            return FormulaNode.Unknown(a.Start, b.End);
        }

        Dimension d = divide ? a.Dimension / b.Dimension : a.Dimension * b.Dimension;
        if (Math.Max(Highest(a.Dimension) + Highest(b.Dimension), Highest(d)) > HighestPower)
        {
            messages.TooManyPowers(a.Start, b.End);
            return FormulaNode.Unknown(a.Start, b.End);
        }

        return FormulaNode.Value(d, a.Start, b.End);
    }

    /// <summary>One of two values of the same dimension, as for <c>min</c>.</summary>
    public FormulaNode OneOf(FormulaNode a, FormulaNode b)
    {
        (a, b) = (AsValue(a), AsValue(b));
        FormulaNode whole = Alike("compare", a, b, "with", a.Start, b.End);
        TemperatureLevel level = a.Level == b.Level ? a.Level : TemperatureLevel.Unknown;
        return whole with { Level = level, IsZero = a.IsZero && b.IsZero };
    }

    public FormulaNode Compared(FormulaNode a, FormulaNode b)
    {
        (a, b) = (AsValue(a), AsValue(b));
        FormulaNode whole = Alike("compare", a, b, "with", a.Start, b.End);
        if (whole.IsUnknown)
        {
            return whole;
        }

        if (a.Level == TemperatureLevel.Difference && b.Level == TemperatureLevel.Scale)
        {
            messages.DifferenceOnScale(b);
        }
        else if (a.Level == TemperatureLevel.Scale && b.Level == TemperatureLevel.Difference)
        {
            messages.DifferenceOnScale(a);
        }

        return FormulaNode.Condition(whole.Dimension, a.Start, b.End);
    }

    public FormulaNode Joined(FormulaNode a, FormulaNode b)
    {
        (a, b) = (AsCondition(a), AsCondition(b));
        return a.IsUnknown || b.IsUnknown
            ? FormulaNode.Unknown(a.Start, b.End)
            : FormulaNode.Condition(a.Dimension == b.Dimension ? a.Dimension : Dimension.One, a.Start, b.End);
    }

    private FormulaNode Alike(string verb, FormulaNode a, FormulaNode b, string between, int start, int end)
    {
        if (a.IsUnknown || b.IsUnknown)
        {
            return FormulaNode.Unknown(start, end);
        }

        Dimension d = a.IsZero ? b.Dimension : a.Dimension;
        if (a.Dimension == b.Dimension)
        {
            return FormulaNode.Value(d, start, end);
        }

        if ((a.IsZero || b.IsZero) && d == Dimension.Kelvin && (a.Level | b.Level) != TemperatureLevel.Difference)
        {
            messages.ZeroTemperature(a.IsZero ? a : b);
        }
        else if (!a.IsZero && !b.IsZero)
        {
            messages.CannotCombine(verb, a, b, between, start, end);
        }
        else
        {
            return FormulaNode.Value(d, start, end);
        }

        return FormulaNode.Unknown(start, end);
    }

    private FormulaNode WithoutScale(FormulaNode node, string where)
    {
        if (node.Level != TemperatureLevel.Scale)
        {
            return node;
        }

        messages.ScaleInSum(node, where);
        return FormulaNode.Unknown(node.Start, node.End);
    }

    private static int Highest(Dimension d) => Math.Max(
        Math.Max(Math.Abs((int)d.Mass), Math.Abs((int)d.Length)),
        Math.Max(Math.Max(Math.Abs((int)d.Time), Math.Abs((int)d.Temperature)), Math.Abs((int)d.Current)));
}
