namespace Sightglass.Network.Tests.Probes;

/// <summary>Compares derivatives with the functions that they are said to belong to.</summary>
public static class Slope
{
    private const int Samples = 16;

    /// <summary>
    /// By the mean value theorem a difference quotient is the slope somewhere between: it must lie between the least and the greatest slope there.
    /// </summary>
    /// <param name="law">Flows and slopes (flow by flow) as a function of one potential.</param>
    /// <param name="all">All potentials: their sizes tell how far rounding reaches.</param>
    /// <param name="column">Which of them it is.</param>
    public static void Check(Func<double, (double[] Flows, double[] Slopes)> law, double[] all, double half, int column)
    {
        int columns = all.Length;
        double at = all[column];
        double from = at - half, to = at + half;
        (double[] Flows, double[] Slopes)[] points = [.. Enumerable.Range(0, Samples + 1).Select(i => law(from + ((to - from) * i / Samples)))];
        for (int f = 0; f < points[0].Flows.Length; f++)
        {
            double[] slopes = [.. points.Select(x => x.Slopes[(f * columns) + column])];
            double low = points[0].Flows[f], high = points[^1].Flows[f];
            double quotient = (high - low) / (to - from);
            double greatest = slopes.Max(Math.Abs);
            double size = Math.Abs(low) + Math.Abs(high) + all.Select((p, j) => Math.Max(1, Math.Abs(p)) * Math.Abs(points[0].Slopes[(f * columns) + j])).Sum();
            double rounding = size * 1e-14 / half;
            double tolerance = (1e-5 * greatest) + rounding;
            Assert.True(
                quotient >= slopes.Min() - tolerance && quotient <= slopes.Max() + tolerance,
                $"flow {f} by potential {column} at {at:R} ± {half:R}: difference {quotient:R}, slopes {slopes.Min():R} to {slopes.Max():R}");
        }
    }

    /// <summary>Halves a line towards the side on which the slopes differ more: where they are continuous, nothing is left of the difference.</summary>
    /// <remarks>Slopes far below 1e-9 are rounding.</remarks>
    public static void CheckNoJump(Func<double, double[]> slopes)
    {
        double low = 0, high = 1;
        double[] atLow = slopes(low), atHigh = slopes(high);
        double[] scale = [.. atLow.Zip(atHigh, (a, b) => 1e-9 + Math.Abs(a) + Math.Abs(b))];
        for (int i = 0; i < 52; i++)
        {
            double middle = (low + high) / 2;
            double[] at = slopes(middle);
            for (int j = 0; j < scale.Length; j++) scale[j] = Math.Max(scale[j], Math.Abs(at[j]));
            if (Distance(atLow, at, scale) >= Distance(at, atHigh, scale))
            {
                (high, atHigh) = (middle, at);
            }
            else
            {
                (low, atLow) = (middle, at);
            }
        }

        Assert.True(Distance(atLow, atHigh, scale) < 1e-5, $"slopes jump by a share of {Distance(atLow, atHigh, scale):R} at {low:R} of the way");
    }

    private static double Distance(double[] a, double[] b, double[] scale) =>
        a.Zip(b, (x, y) => Math.Abs(x - y)).Zip(scale, (d, s) => d / s).Max();
}
