using System.Collections.Immutable;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Tests.Diagram;

/// <summary>What must hold for every diagram.</summary>
internal static class DiagramGeometry
{
    /// <summary>The first fault found, or null.</summary>
    public static string? Fault(DiagramLayout layout) =>
        Missing(layout) ?? Overlap(layout) ?? Slanted(layout) ?? Loose(layout) ?? Through(layout) ?? Outside(layout);

    private static string? Missing(DiagramLayout layout)
    {
        HashSet<string> drawn = [.. layout.Bodies.Select(b => b.Node.Id), .. layout.Parts.Select(p => p.Node.Id)];
        DiagramNode? missing = layout.Input.Nodes.FirstOrDefault(n => n.Role is DiagramRole.Tank or DiagramRole.Machine or DiagramRole.Path && !drawn.Contains(n.Id));
        return missing is null ? layout.Parts.GroupBy(p => p.Node.Id).FirstOrDefault(g => g.Count() > 1) is { } twice ? $"{twice.Key} is drawn twice" : null : $"{missing.Id} is missing";
    }

    private static string? Overlap(DiagramLayout layout)
    {
        (string Name, Bounds Box)[] solid =
        [
            .. layout.Bodies.Select(b => (b.Node.Id, b.Box)),
            .. layout.Parts.Select(p => (p.Node.Id, p.Box)),
            .. layout.Instruments.Select(i => (i.Node.Id, i.Box)),
            .. layout.Labels.Where(l => l.Style != "body-words").Select(l => ("words " + l.Text, l.Box)),
        ];
        for (int i = 0; i < solid.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Bounds a = solid[i].Box.Grow(-0.5);
                Bounds b = solid[j].Box.Grow(-0.5);
                if (a.Left < b.Right && b.Left < a.Right && a.Low < b.High && b.Low < a.High)
                {
                    return $"{solid[i]} overlaps {solid[j]}";
                }
            }
        }

        return null;
    }

    private static string? Slanted(DiagramLayout layout)
    {
        DiagramPipe? pipe = layout.Pipes.FirstOrDefault(p => Segments(p.Points).Any(s => Math.Abs(s.A.X - s.B.X) > 0.01 && Math.Abs(s.A.Y - s.B.Y) > 0.01));
        return pipe is null ? null : $"pipe {pipe.Id} is slanted: {string.Join(' ', pipe.Points)}";
    }

    // Every symbol sits on a pipe.
    private static string? Loose(DiagramLayout layout)
    {
        DiagramPart? part = layout.Parts.FirstOrDefault(p => !layout.Pipes.Any(q => Segments(q.Points).Any(s =>
            Math.Abs(Distance(s.A.X, s.B.X, p.X)) < 0.01 && Math.Abs(Distance(s.A.Y, s.B.Y, p.Y)) < 0.01)));
        return part is null ? null : $"{part.Node.Id} is on no pipe";
    }

    // No pipe runs through a symbol that it does not serve, nor through a tank or machine.
    private static string? Through(DiagramLayout layout)
    {
        foreach (DiagramPipe pipe in layout.Pipes)
        {
            foreach (((double X, double Y) a, (double X, double Y) b) in Segments(pipe.Points))
            {
                Bounds line = new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));
                DiagramPart? part = layout.Parts.FirstOrDefault(p => p.Box.Grow(-3).DistanceTo(line) <= 0 && !Serves(pipe, p));
                DiagramBody? body = layout.Bodies.FirstOrDefault(p => p.Box.Grow(-3).DistanceTo(line) <= 0);
                if (part is not null || body is not null)
                {
                    return $"pipe {pipe.Id} runs through {part?.Node.Id ?? body!.Node.Id}: {string.Join(' ', pipe.Points)} box {part?.Box ?? body!.Box}";
                }
            }
        }

        return null;
    }

    private static bool Serves(DiagramPipe pipe, DiagramPart part) => Segments(pipe.Points).Any(s =>
        Distance(s.A.X, s.B.X, part.X) < 0.01 && Distance(s.A.Y, s.B.Y, part.Y) < 0.01);

    private static string? Outside(DiagramLayout layout) =>
        layout.Pipes.SelectMany(p => p.Points).All(p => layout.Sheet == layout.Sheet.Union(new Bounds(p.X, p.Y, p.X, p.Y))) ? null : "a pipe leaves the sheet";

    private static double Distance(double a, double b, double x) => x < Math.Min(a, b) ? Math.Min(a, b) - x : x > Math.Max(a, b) ? x - Math.Max(a, b) : 0;

    private static IEnumerable<((double X, double Y) A, (double X, double Y) B)> Segments(ImmutableArray<(double X, double Y)> points) => points.Zip(points.Skip(1));
}
