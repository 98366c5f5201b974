using System.Collections.Immutable;

namespace Sightglass.Training.Lessons;

/// <summary>Divides the stops of a route into stations.</summary>
internal static class Stationing
{
    /// <summary>
    /// So many stretches of stops that follow each other, the longest of them as short as can be: by the least for the first stops and so many stations, one station after the other.
    /// </summary>
    /// <param name="stops">In the order of the route, no fewer than stations; every caution told whole.</param>
    /// <param name="stations">1 or more.</param>
    /// <param name="times">How long people take.</param>
    public static ImmutableArray<LessonStation> Divide(ImmutableArray<LessonStop> stops, int stations, LessonTimes times)
    {
        int n = stops.Length;
        if (n == 0)
        {
            return [new([], 0)];
        }

        double[][] seconds = [.. Enumerable.Range(0, n).Select(from => Seconds(stops, from, times))];

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
                    double longest = Math.Max(least[k - 1][j], seconds[j][i - j - 1]);
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
            divided.Add(Station(stops, from[k][i], i, times));
        }

        divided.Reverse();
        return [.. divided];
    }

    /// <summary>At the stops of every stretch that begins at one, and walking between them: the first alone, the first two and so on.</summary>
    private static double[] Seconds(ImmutableArray<LessonStop> stops, int from, LessonTimes times)
    {
        Retelling retelling = new(times);
        double[] seconds = new double[stops.Length - from];
        double all = 0;
        for (int i = from; i < stops.Length; i++)
        {
            all += retelling.Next(stops[i], i + 1).Seconds + (i > from ? stops[i].WalkSeconds : 0);
            seconds[i - from] = all;
        }

        return seconds;
    }

    private static LessonStation Station(ImmutableArray<LessonStop> stops, int from, int to, LessonTimes times)
    {
        Retelling retelling = new(times);
        return new([.. Enumerable.Range(from, to - from).Select(i => retelling.Next(stops[i], i + 1))], Seconds(stops, from, times)[to - from - 1]);
    }
}
