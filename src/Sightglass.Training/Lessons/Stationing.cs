using System.Collections.Immutable;

namespace Sightglass.Training.Lessons;

/// <summary>Divides the stops of a route into stations.</summary>
internal static class Stationing
{
    /// <summary>
    /// So many stretches of stops that follow each other, the longest of them as short as can be: by the least for the first stops and so many stations, one station after the other.
    /// </summary>
    /// <param name="stops">In the order of the route, no fewer than stations.</param>
    /// <param name="stations">1 or more.</param>
    public static ImmutableArray<LessonStation> Divide(ImmutableArray<LessonStop> stops, int stations)
    {
        int n = stops.Length;
        if (n == 0)
        {
            return [new([], 0)];
        }

        // least[k][i]: the longest station where the first i stops are divided into k; from[k][i]: where the last of them begins.
        double[][] least = [.. Enumerable.Range(0, stations + 1).Select(_ => Enumerable.Repeat(double.PositiveInfinity, n + 1).ToArray())];
        int[][] from = [.. Enumerable.Range(0, stations + 1).Select(_ => new int[n + 1])];
        least[0][0] = 0;
        for (int k = 1; k <= stations; k++)
        {
            for (int i = k; i <= n; i++)
            {
                for (int j = k - 1; j < i; j++)
                {
                    double longest = Math.Max(least[k - 1][j], Seconds(stops, j, i));
                    if (longest < least[k][i])
                    {
                        (least[k][i], from[k][i]) = (longest, j);
                    }
                }
            }
        }

        List<LessonStation> divided = [];
        for (int k = stations, i = n; k > 0; i = from[k][i], k--)
        {
            divided.Add(new(stops[from[k][i]..i], Seconds(stops, from[k][i], i)));
        }

        divided.Reverse();
        return [.. divided];
    }

    /// <summary>At the stops of a stretch, and walking between them.</summary>
    private static double Seconds(ImmutableArray<LessonStop> stops, int from, int to)
    {
        double seconds = 0;
        for (int i = from; i < to; i++)
        {
            seconds += stops[i].Seconds + (i > from ? stops[i].Stop.Seconds : 0);
        }

        return seconds;
    }
}
