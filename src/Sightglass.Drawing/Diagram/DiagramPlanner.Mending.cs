using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

internal sealed partial class DiagramPlanner
{
    // What was placed later may stand in the way of a pipe: such a stretch is led round it.
    private void Mend()
    {
        for (int i = 0; i < _board.Pipes.Count; i++)
        {
            DiagramPipe pipe = _board.Pipes[i];
            List<(double X, double Y)> points = [.. pipe.Points.Take(1)];
            bool mended = false;
            foreach (((double X, double Y) a, (double X, double Y) b) in Stretches(pipe))
            {
                if (IsBlocked(a, b))
                {
                    points.AddRange(new DiagramWay(_board).Find([a], b).Skip(1));
                    mended = true;
                }

                points.Add(b);
            }

            if (mended)
            {
                _board.Pipes[i] = pipe with { Points = [.. points] };
            }
        }
    }

    // A pipe's segments, cut at the symbols that stand on it.
    private IEnumerable<((double X, double Y) A, (double X, double Y) B)> Stretches(DiagramPipe pipe)
    {
        foreach (((double X, double Y) a, (double X, double Y) b) in pipe.Points.Zip(pipe.Points.Skip(1)))
        {
            (double X, double Y) from = a;
            foreach (DiagramPart part in _board.Parts.Where(p => IsOn(a, b, p)).OrderBy(p => Math.Abs(p.X - a.X) + Math.Abs(p.Y - a.Y)))
            {
                yield return (from, (part.X, part.Y));
                from = (part.X, part.Y);
            }

            yield return (from, b);
        }
    }

    private bool IsBlocked((double X, double Y) a, (double X, double Y) b)
    {
        Bounds line = new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));
        return _board.Parts.Exists(p => p.Box.Grow(-3).DistanceTo(line) <= 0 && !IsOn(a, b, p)) || _board.Bodies.Exists(p => p.Box.Grow(-3).DistanceTo(line) <= 0);
    }

    private static bool IsOn((double X, double Y) a, (double X, double Y) b, DiagramPart part) =>
        part.X >= Math.Min(a.X, b.X) - 0.01 && part.X <= Math.Max(a.X, b.X) + 0.01 && part.Y >= Math.Min(a.Y, b.Y) - 0.01 && part.Y <= Math.Max(a.Y, b.Y) + 0.01;
}
