using Sightglass.Basics.Numbers;

namespace Sightglass.Plant.Calculators;

/// <summary>Functions of one number with the same bits on every machine.</summary>
internal static class Real
{
    private const double Ln10 = 2.302585092994046;

    public static double Exp(double x) => Portable.Exp(new Scalar(x)).V;

    public static double Log(double x) => Portable.Log(new Scalar(x)).V;

    public static double Log10(double x) => Log(x) / Ln10;

    public static double Pow(double a, double b) => Portable.Pow(new Scalar(a), new Scalar(b)).V;
}
