using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Plan;

/// <summary>The body of a vehicle seen from above, judged by the side silhouette: where it begins and ends, and how far each end draws in.</summary>
internal readonly record struct PlanBody(double Front, double Rear, double FrontTaper, double RearTaper)
{
    /// <summary>How far a windshield lies behind its end, where there is one: less is a flat wall.</summary>
    private const double Windshield = 0.4;

    /// <summary>Whether its own front lies at its rear.</summary>
    public bool IsTurned { get; init; }

    /// <summary>The windshield: the middle of its foremost edge and its corners, metres; null where the front is flat.</summary>
    public (double Tip, double Back)? Glass =>
        !IsTurned && FrontTaper > Windshield ? (Front + (FrontTaper * 0.55), Front + FrontTaper)
        : IsTurned && RearTaper > Windshield ? (Rear - (RearTaper * 0.55), Rear - RearTaper)
        : null;

    /// <summary>Part of the half width that is flat at the end.</summary>
    public double FrontFlat => FrontTaper > 0.6 ? 0.55 : 0.85;

    public double RearFlat => RearTaper > 0.6 ? 0.55 : 0.85;

    public static PlanBody Of(ClassBook book, Vehicle vehicle)
    {
        PlanBody own = Own(book.ClassOf(vehicle), vehicle.To - vehicle.From);
        return vehicle.IsTurned
            ? new PlanBody(vehicle.To - own.Rear, vehicle.To - own.Front, own.RearTaper, own.FrontTaper) { IsTurned = true }
            : own with { Front = vehicle.From + own.Front, Rear = vehicle.From + own.Rear };
    }

    // In the axes of its class.
    private static PlanBody Own(ClassBook type, double length)
    {
        PathData? body = type.Silhouettes.Where(s => s.Side is Side.Right or Side.Left).SelectMany(s => s.Shapes)
            .Where(s => s.Style == "outline").Select(s => PathData.Read(s.Path, out _)).Where(p => p.IsClosed)
            .MaxBy(p => (p.Box()?.Width ?? 0) * (p.Box()?.Height ?? 0));
        if (body?.Box() is not { } box || box.Width < length / 2)
        {
            return new PlanBody(0, length, 0.2, 0.2);
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
