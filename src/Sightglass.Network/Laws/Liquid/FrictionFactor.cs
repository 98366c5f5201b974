using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Liquid;

/// <summary>
/// Darcy's friction factor f of a round pipe: Δp = f·(L/D)·ρV²/2. Arguments: Reynolds number, above 0, and roughness over diameter, 0…0.1.
/// Sources: White, Fluid Mechanics, ch. 6 (from memory).
/// </summary>
public static class FrictionFactor
{
    private const double Ln10 = 2.302585092994046;

    /// <summary>64/Re, below about Re 2000.</summary>
    public static double Laminar(double reynolds) => 64 / reynolds;

    /// <summary>1/√f = −2·log₁₀(ε/3.7D + 2.51/(Re·√f)), above about Re 4000; solved to rounding.</summary>
    public static double Colebrook(double reynolds, double roughness)
    {
        double x = 7;
        for (int i = 0; i < 40; i++) x = -2 * Log10((roughness / 3.7) + (2.51 * x / reynolds));
        return 1 / (x * x);
    }

    /// <summary>0.25/log₁₀(ε/3.7D + 5.74/Re^0.9)²: within 1.5 % of Colebrook.</summary>
    public static double SwameeJain(double reynolds, double roughness)
    {
        double log = Log10((roughness / 3.7) + (5.74 / Pow(reynolds, 0.9)));
        return 0.25 / (log * log);
    }

    /// <summary>1/√f = −1.8·log₁₀((ε/3.7D)^1.11 + 6.9/Re): within 1.5 % of Colebrook.</summary>
    public static double Haaland(double reynolds, double roughness)
    {
        double root = -1.8 * Log10(Pow(roughness / 3.7, 1.11) + (6.9 / reynolds));
        return 1 / (root * root);
    }

    private static double Log10(double x) => Portable.Log(new Scalar(x)).V / Ln10;

    private static double Pow(double x, double power) => Portable.Pow(new Scalar(x), new Scalar(power)).V;
}
