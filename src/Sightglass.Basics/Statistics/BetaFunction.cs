namespace Sightglass.Basics.Statistics;

/// <summary>The beta function and its regularised incomplete form Iₓ(a, b), relative error about 1e-13 for a, b up to 1e7.</summary>
public static class BetaFunction
{
    private const double LogTwoPi = 1.8378770664093454836;
    private const int MostTerms = 100_000;
    private const double Tiny = 1e-300;

    /// <summary>log B(a, b) for a, b &gt; 0.</summary>
    public static double Log(double a, double b)
    {
        RequirePositive(a, b);
        double n = a + b;
        return (0.5 * (LogTwoPi + Elementary.Log(n / (a * b)))) + (a * LogShare(a, b)) + (b * LogShare(b, a))
            + GammaFunction.StirlingError(a) + GammaFunction.StirlingError(b) - GammaFunction.StirlingError(n);
    }

    /// <summary>
    /// Iₓ(a, b): the chance that a beta-distributed number is at most x; for whole a and b the chance of at least a successes in a+b−1 tries.
    /// </summary>
    /// <param name="a">Above 0.</param>
    /// <param name="b">Above 0.</param>
    /// <param name="x">0…1.</param>
    public static double Regularized(double a, double b, double x) => Elementary.Exp(LogRegularized(a, b, x));

    /// <summary>log Iₓ(a, b), also where Iₓ itself would be too small for a number; −∞ for x = 0.</summary>
    public static double LogRegularized(double a, double b, double x)
    {
        RequirePositive(a, b);
        if (!(x is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "Must be from 0 to 1.");
        }

        if (x is 0 or 1)
        {
            return x == 0 ? double.NegativeInfinity : 0;
        }

        if (x > (a + 1) / (a + b + 2))
        {
            double other = Elementary.Exp(LogPower(b, a, 1 - x, x)) * Fraction(b, a, 1 - x) / b;
            return Elementary.LogOnePlus(-Math.Min(other, 1));
        }

        return LogPower(a, b, x, 1 - x) + Elementary.Log(Fraction(a, b, x) / a);
    }

    /// <summary>The x at which Iₓ(a, b) is this chance.</summary>
    /// <param name="a">Above 0.</param>
    /// <param name="b">Above 0.</param>
    /// <param name="chance">0…1.</param>
    public static double Quantile(double a, double b, double chance)
    {
        RequirePositive(a, b);
        if (!(chance is > 0 and < 1))
        {
            return chance switch { 0 => 0, 1 => 1, _ => throw new ArgumentOutOfRangeException(nameof(chance), chance, "Must be from 0 to 1.") };
        }

        (double low, double high) = (0, 1);
        double x = a / (a + b);
        for (int i = 0; i < 200 && high - low > 1e-16 * high; i++)
        {
            double excess = Regularized(a, b, x) - chance;
            (low, high) = excess < 0 ? (x, high) : (low, x);
            double density = Elementary.Exp(LogPower(a, b, x, 1 - x)) / (x * (1 - x));
            double next = x - (excess / density);
            if (Math.Abs(next - x) <= 1e-16 * x)
            {
                break;
            }

            x = next > low && next < high ? next : 0.5 * (low + high);
        }

        return x;
    }

    /// <summary>log(a/(a+b)), exact also where the share is nearly 1.</summary>
    private static double LogShare(double a, double b) => a < b ? Elementary.Log(a / (a + b)) : Elementary.LogOnePlus(-b / (a + b));

    /// <summary>
    /// log(xᵃ·yᵇ/B(a, b)) for y = 1−x, by the saddle-point form of C. Loader ('Fast and accurate computation of binomial probabilities', 2000, from memory):
    /// the large parts cancel before they are computed.
    /// </summary>
    private static double LogPower(double a, double b, double x, double y)
    {
        double n = a + b;
        double away = (b * x) - (a * y);
        double deviance = (a * Elementary.LogOnePlus(away / a)) + (b * Elementary.LogOnePlus(-away / b));
        return deviance + (0.5 * (Elementary.Log(a * b / n) - LogTwoPi))
            + GammaFunction.StirlingError(n) - GammaFunction.StirlingError(a) - GammaFunction.StirlingError(b);
    }

    /// <summary>The continued fraction of Iₓ (Abramowitz and Stegun 26.5.8, from memory) by the modified method of Lentz; quick for x below the mean.</summary>
    private static double Fraction(double a, double b, double x)
    {
        double c = 1;
        double d = 1 / NotZero(1 - ((a + b) * x / (a + 1)));
        double f = d;
        for (int m = 1; m <= MostTerms; m++)
        {
            double even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / NotZero(1 + (even * d));
            c = NotZero(1 + (even / c));
            f *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / NotZero(1 + (odd * d));
            c = NotZero(1 + (odd / c));
            double change = d * c;
            f *= change;
            if (Math.Abs(change - 1) < 1e-15)
            {
                break;
            }
        }

        return f;
    }

    private static double NotZero(double x) => Math.Abs(x) < Tiny ? Tiny : x;

    private static void RequirePositive(double a, double b)
    {
        if (!(a > 0 && b > 0 && double.IsFinite(a) && double.IsFinite(b)))
        {
            throw new ArgumentOutOfRangeException(nameof(a), (a, b), "Both parameters must be above 0.");
        }
    }
}
