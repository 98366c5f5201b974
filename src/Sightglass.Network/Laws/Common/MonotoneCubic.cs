using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Laws.Common;

/// <summary>
/// A rising curve through an author's points that has no waves the points do not have: piecewise cubic with limited slopes, going on straight past
/// both ends. Source: Fritsch and Butland 1984, weighted harmonic means (from memory).
/// </summary>
public static class MonotoneCubic
{
    /// <summary>Of the points in a sheet: x, y, slope.</summary>
    public const int RowLength = 3;

    /// <summary>Past any x: marks rows that are not used.</summary>
    private const double Unused = 1e300;

    /// <summary>An end's slope is at least this share of that of its chord, so that the curve can always be inverted.</summary>
    private const double FlattestEnd = 0.1;

    /// <summary>The curve at x, and its slope.</summary>
    /// <param name="rows">The first of <paramref name="count"/> rows of a sheet.</param>
    /// <param name="last">x of the last point.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Evaluate<T>(T x, ref T rows, int count, T last, out T slope)
        where T : struct, IReal<T>
    {
        T within = T.Max(T.Min(x, last), rows);
        T x0 = rows, y0 = Unsafe.Add(ref rows, 1), d0 = Unsafe.Add(ref rows, 2);
        T x1 = Unsafe.Add(ref rows, 3), y1 = Unsafe.Add(ref rows, 4), d1 = Unsafe.Add(ref rows, 5);
        for (int i = 1; i < count - 1; i++)
        {
            ref T row = ref Unsafe.Add(ref rows, i * RowLength);
            T past = T.Less(row, within);
            x0 = T.Select(past, row, x0);
            y0 = T.Select(past, Unsafe.Add(ref row, 1), y0);
            d0 = T.Select(past, Unsafe.Add(ref row, 2), d0);
            x1 = T.Select(past, Unsafe.Add(ref row, 3), x1);
            y1 = T.Select(past, Unsafe.Add(ref row, 4), y1);
            d1 = T.Select(past, Unsafe.Add(ref row, 5), d1);
        }

        T per = T.Of(1) / (x1 - x0);
        T chord = (y1 - y0) * per;
        T s = within - x0;
        T second = ((T.Of(3) * chord) - (T.Of(2) * d0) - d1) * per;
        T third = (d0 + d1 - (T.Of(2) * chord)) * per * per;
        slope = d0 + (s * ((T.Of(2) * second) + (T.Of(3) * s * third)));
        return y0 + (s * (d0 + (s * (second + (s * third))))) + (slope * (x - within));
    }

    /// <summary>The rows of a sheet with room for <paramref name="count"/> points.</summary>
    /// <exception cref="ArgumentException">Fewer than two points or more than there is room for, or x or y does not rise from one to the next.</exception>
    public static double[] RowsOf(IReadOnlyList<(double X, double Y)> points, int count)
    {
        if (points.Count < 2 || points.Count > count) throw new ArgumentException($"2 to {count} points are wanted, not {points.Count}.", nameof(points));
        for (int i = 1; i < points.Count; i++)
        {
            if (!(points[i].X > points[i - 1].X && points[i].Y > points[i - 1].Y)) throw new ArgumentException("Each point must exceed the one before it.", nameof(points));
        }

        double[] rows = new double[count * RowLength];
        Array.Fill(rows, Unused);
        for (int i = 0; i < points.Count; i++)
        {
            (rows[i * RowLength], rows[(i * RowLength) + 1]) = points[i];
            rows[(i * RowLength) + 2] = SlopeAt(points, i);
        }

        return rows;
    }

    private static double SlopeAt(IReadOnlyList<(double X, double Y)> points, int i)
    {
        if (points.Count == 2) return Chord(points, 0);
        if (i == 0) return EndSlope(Width(points, 0), Width(points, 1), Chord(points, 0), Chord(points, 1));
        int n = points.Count - 1;
        if (i == n) return EndSlope(Width(points, n - 1), Width(points, n - 2), Chord(points, n - 1), Chord(points, n - 2));
        double before = (2 * Width(points, i)) + Width(points, i - 1);
        double after = Width(points, i) + (2 * Width(points, i - 1));
        return (before + after) / ((before / Chord(points, i - 1)) + (after / Chord(points, i)));
    }

    /// <summary>By the parabola through the three nearest points, between a tenth of and three times the slope of the end chord.</summary>
    private static double EndSlope(double width, double next, double chord, double nextChord) =>
        Math.Clamp(((((2 * width) + next) * chord) - (width * nextChord)) / (width + next), FlattestEnd * chord, 3 * chord);

    private static double Width(IReadOnlyList<(double X, double Y)> points, int i) => points[i + 1].X - points[i].X;

    private static double Chord(IReadOnlyList<(double X, double Y)> points, int i) => (points[i + 1].Y - points[i].Y) / Width(points, i);
}
