namespace Sightglass.Cards.Programs;

/// <summary>A calculation with numbers that were read and written down: <c>P1 − P2</c>, <c>(A + B) / 2</c>. SI.</summary>
public abstract record ReadingExpression
{
    private ReadingExpression()
    {
    }

    /// <summary>The value (SI) with the numbers written down so far, by index of <see cref="CardProgram.Names"/>.</summary>
    public abstract double Evaluate(ReadOnlySpan<double> written);

    public sealed record Number(double Value) : ReadingExpression
    {
        public override double Evaluate(ReadOnlySpan<double> written) => Value;
    }

    public sealed record Name(int Index) : ReadingExpression
    {
        public override double Evaluate(ReadOnlySpan<double> written) => written[Index];
    }

    public sealed record Negative(ReadingExpression Inner) : ReadingExpression
    {
        public override double Evaluate(ReadOnlySpan<double> written) => -Inner.Evaluate(written);
    }

    /// <summary><see cref="Sign"/> is one of + − × ÷ written as <c>+ - * /</c>.</summary>
    public sealed record Binary(char Sign, ReadingExpression Left, ReadingExpression Right) : ReadingExpression
    {
        public override double Evaluate(ReadOnlySpan<double> written)
        {
            double a = Left.Evaluate(written);
            double b = Right.Evaluate(written);
            return Sign switch
            {
                '+' => a + b,
                '-' => a - b,
                '*' => a * b,
                _ => a / b,
            };
        }
    }
}
