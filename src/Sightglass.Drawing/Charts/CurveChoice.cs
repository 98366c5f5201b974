using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>Chooses the moments whose curves tell most: the first, the last, and between them equal changes rather than equal times, so that curves stand apart.</summary>
internal static class CurveChoice
{
    /// <summary>Indices of moments, rising; one where nothing changes.</summary>
    public static ImmutableArray<int> Of(TrainPressure train)
    {
        int count = train.Moments.Length;
        double[] way = new double[count];
        for (int i = 1; i < count; i++)
        {
            way[i] = way[i - 1] + Change(train.Moments[i - 1].Pressures, train.Moments[i].Pressures);
        }

        int most = Math.Max(train.Curves, 2);
        double whole = count > 0 ? way[^1] : 0;
        SortedSet<int> chosen = count > 0 ? [0] : [];
        for (int k = 1; whole > 0 && k < most; k++)
        {
            chosen.Add(Nearest(way, whole * k / (most - 1)));
        }

        return [.. chosen];
    }

    /// <summary>The greatest change anywhere along the train.</summary>
    private static double Change(ImmutableArray<double> before, ImmutableArray<double> after) =>
        before.Zip(after, (a, b) => Math.Abs(a - b)).Where(double.IsFinite).DefaultIfEmpty(0).Max();

    private static int Nearest(double[] way, double wanted)
    {
        int at = Array.FindIndex(way, w => w >= wanted * (1 - 1e-12));
        return at < 0 ? way.Length - 1 : at > 0 && wanted - way[at - 1] < way[at] - wanted ? at - 1 : at;
    }
}
