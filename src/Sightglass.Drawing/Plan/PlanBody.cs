using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Plan;

/// <summary>The body seen from above, judged by the side silhouette: where it begins and ends, and how far each end draws in.</summary>
internal readonly record struct PlanBody(double Front, double Rear, double FrontTaper, double RearTaper)
{
    /// <summary>Part of the half width that is flat at the end.</summary>
    public double FrontFlat => FrontTaper > 0.6 ? 0.55 : 0.85;

    public double RearFlat => RearTaper > 0.6 ? 0.55 : 0.85;

    public static PlanBody Of(ClassBook book)
    {
        PathData? body = book.Silhouettes.Where(s => s.Side is Side.Right or Side.Left).SelectMany(s => s.Shapes)
            .Where(s => s.Style == "outline").Select(s => PathData.Read(s.Path, out _)).Where(p => p.IsClosed)
            .MaxBy(p => (p.Box()?.Width ?? 0) * (p.Box()?.Height ?? 0));
        if (body?.Box() is not { } box || box.Width < book.Length / 2)
        {
            return new PlanBody(0, book.Length, 0.2, 0.2);
        }

        // A streamlined end is drawn in above: how much farther back the corner points near the roof lie.
        (double X, double Z)[] high = [.. Corners(body).Where(p => p.Z > box.Low + (0.8 * box.Height))];
        double front = high.Select(p => p.X).DefaultIfEmpty(box.Left).Min() - box.Left;
        double rear = box.Right - high.Select(p => p.X).DefaultIfEmpty(box.Right).Max();
        return new PlanBody(box.Left, box.Right, Math.Clamp(front, 0.2, 2.4), Math.Clamp(rear, 0.2, 2.4));
    }

    private static IEnumerable<(double X, double Z)> Corners(PathData path) =>
        path.Segments.Where(s => s.Numbers.Count >= 2).Select(s => (s.Numbers[^2], s.Numbers[^1]));
}
