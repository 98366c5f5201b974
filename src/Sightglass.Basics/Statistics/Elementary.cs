using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Statistics;

/// <summary>Exponential and logarithm of <see cref="Portable"/> for single numbers, also where the argument is near 1 or 0.</summary>
internal static class Elementary
{
    public static double Exp(double x) => Portable.Exp(new Scalar(x)).V;

    public static double Log(double x) => Portable.Log(new Scalar(x)).V;

    public static double Pow(double x, double y) => Portable.Pow(new Scalar(x), new Scalar(y)).V;

    /// <summary>log(1+x), exact also for tiny x: the rounding of 1+x is taken out again (W. Kahan's device, from memory).</summary>
    public static double LogOnePlus(double x)
    {
        double u = 1 + x;
        return u == 1 ? x : Log(u) * x / (u - 1);
    }

    /// <summary>eˣ − 1, exact also for tiny x (same device).</summary>
    public static double ExpMinusOne(double x)
    {
        double u = Exp(x);
        return u == 1 ? x : u - 1 == -1 || double.IsInfinity(u) ? u - 1 : (u - 1) * x / Log(u);
    }
}
