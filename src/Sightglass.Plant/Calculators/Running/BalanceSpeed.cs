using Sightglass.Network.Laws.Motion;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>The speed at which what pulls is what resists. Source: method of Hay, Railroad Engineering (from memory).</summary>
public static class BalanceSpeed
{
    private const int Halvings = 80;
    private const double Fastest = 200;

    /// <summary>
    /// m/s at which a constant power balances resistance and track: between 0 and 200, above the corner speed. Downhill, where nothing resists, 200; where not even a crawl is held, 0.
    /// </summary>
    /// <param name="watts">At the rail.</param>
    /// <param name="resistance">Sheet of <see cref="SpeedResistance"/> of the whole train; the sum of its vehicles' sheets, number by number.</param>
    /// <param name="trackNewtons">Of grade and curves, above 0 against the motion.</param>
    /// <param name="mostNewtons">What adhesion holds.</param>
    public static double MetresPerSecond(double watts, ReadOnlySpan<double> resistance, double trackNewtons, double mostNewtons = double.PositiveInfinity)
    {
        (double low, double high) = (0, Fastest);
        for (int i = 0; i < Halvings; i++)
        {
            double v = (low + high) / 2;
            double over = Math.Min(watts / v, mostNewtons) - SpeedResistance.Newtons(resistance, v) - trackNewtons;
            (low, high) = over > 0 ? (v, high) : (low, v);
        }

        return (low + high) / 2;
    }
}
