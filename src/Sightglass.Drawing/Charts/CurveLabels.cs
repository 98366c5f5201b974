using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Charts;

/// <summary>Puts a name onto each curve of a family, where the others are farthest, never onto another name.</summary>
internal static class CurveLabels
{
    private const double Size = 13;
    private const int Tried = 48;
    private const double Clear = 9;

    /// <summary>Of a curve that shows beside a name at its end, pixels.</summary>
    private const double End = 16;

    /// <summary>The middle of each name in pixels; null where there is no room for it.</summary>
    /// <param name="curves">Points in pixels, x rising.</param>
    public static (double X, double Y)?[] Place(IReadOnlyList<IReadOnlyList<(double X, double Y)>> curves, IReadOnlyList<string> names)
    {
        (double X, double Y)?[] placed = new (double, double)?[curves.Count];
        List<Bounds> taken = [];
        for (int i = 0; i < curves.Count; i++)
        {
            double half = (TextMeasure.Width(names[i], TextFace.Sans400, Size) / 2) + 5;
            double best = Clear;
            foreach ((double x, double y) in Points(curves[i], half))
            {
                Bounds box = new(x - half, y - 9, x + half, y + 9);
                double room = curves.Where((_, k) => k != i).Select(c => Distance(c, box, y)).DefaultIfEmpty(1000).Min();
                if (room > best + 1 && !taken.Exists(t => Overlap(t, box)))
                {
                    (best, placed[i]) = (room, (x, y));
                }
            }

            if (placed[i] is { } at)
            {
                taken.Add(new Bounds(at.X - half, at.Y - 9, at.X + half, at.Y + 9));
            }
        }

        return placed;
    }

    private static IEnumerable<(double X, double Y)> Points(IReadOnlyList<(double X, double Y)> curve, double half)
    {
        double from = curve[0].X + half + End;
        double to = curve[^1].X - half - End;
        for (int k = 0; k <= Tried && to > from; k++)
        {
            double x = from + ((to - from) * k / Tried);
            yield return (x, At(curve, x));
        }
    }

    /// <summary>How far a curve keeps from a line of text, over the width of its box.</summary>
    private static double Distance(IReadOnlyList<(double X, double Y)> curve, Bounds box, double y) =>
        new[] { box.Left, (box.Left + box.Right) / 2, box.Right }.Min(x => Math.Abs(At(curve, x) - y));

    private static double At(IReadOnlyList<(double X, double Y)> curve, double x)
    {
        for (int i = 1; i < curve.Count; i++)
        {
            if (curve[i].X >= x)
            {
                double share = curve[i].X > curve[i - 1].X ? (x - curve[i - 1].X) / (curve[i].X - curve[i - 1].X) : 1;
                return curve[i - 1].Y + (share * (curve[i].Y - curve[i - 1].Y));
            }
        }

        return curve[^1].Y;
    }

    private static bool Overlap(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Low < b.High && b.Low < a.High;
}
