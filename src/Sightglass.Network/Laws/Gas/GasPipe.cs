using Sightglass.Basics.Numbers;
using Sightglass.Network.Laws.Common;

namespace Sightglass.Network.Laws.Gas;

/// <summary>
/// A long pipe for a gas at constant temperature: ṁ² = (πD²/4)²·ρ₁·(p₁² − p₂²)/p₁/(f·L/D + 2·ln(p₁/p₂)), down to the pressure ratio at which the flow no longer grows
/// (the pipe chokes at its end: r²·(f·L/D − 2·ln r) = 1 − r²). Source: Crane TP-410 through a public library's documentation (read). The sheet is for
/// <see cref="GasPassage"/>, whose curve meets the formula to 1e-6 for f·L/D = 0.5…20, 3e-5 to 100, 1e-3 at 10,000 or 0.1, worst near choking.
/// </summary>
public static class GasPipe
{
    /// <summary>The sheet of a pipe.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="length">m.</param>
    /// <param name="friction">Darcy's f of the flow that matters.</param>
    /// <param name="specificEnergy">R·T = p/ρ, J/kg.</param>
    /// <param name="fittings">ΣK, added to f·L/D.</param>
    /// <param name="rounding">Share of the choked flow below which the law is linear.</param>
    public static double[] ParametersOf(
        double diameter, double length, double friction, double specificEnergy, double fittings = 0, double rounding = GasIso6358.Rounding)
    {
        double loss = (friction * length / diameter) + fittings;
        ArgumentOutOfRangeException.ThrowIfLessThan(loss, 0.1, nameof(length));
        double Square(double r) => (1 - (r * r)) / (loss - (2 * Log(r)));
        double critical = CriticalRatio(loss);
        double area = Math.PI / 4 * diameter * diameter;
        return GasPassage.ParametersOf(area * Math.Sqrt(Square(critical) / specificEnergy), critical, Square, rounding);
    }

    /// <summary>The pressure ratio at which the flow is greatest, by halving.</summary>
    /// <param name="loss">f·L/D + ΣK.</param>
    private static double CriticalRatio(double loss)
    {
        double low = 1e-6, high = 1;
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            bool below = middle * middle * (loss - (2 * Log(middle))) < 1 - (middle * middle);
            (low, high) = below ? (middle, high) : (low, middle);
        }

        return high;
    }

    private static double Log(double x) => Portable.Log(new Scalar(x)).V;
}
