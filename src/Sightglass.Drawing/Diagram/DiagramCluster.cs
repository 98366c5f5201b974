using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Diagram;

/// <summary>What is read together: the lines of a name, and the symbol that they name.</summary>
/// <param name="Box">Round all of it.</param>
internal sealed record DiagramCluster(Bounds Box, ImmutableArray<DiagramLabel> Labels, ImmutableArray<DiagramPart> Parts)
{
    /// <summary>From a symbol to its words at most, pixels: a handle lies between.</summary>
    private const double Beside = 26;

    /// <summary>From one line of a name to the next at most, in heights of a line.</summary>
    private const double Between = 0.8;

    /// <summary>Names of several lines, or with a symbol; what stands by itself is in none.</summary>
    public static ImmutableArray<DiagramCluster> Of(DiagramLayout layout)
    {
        List<List<DiagramLabel>> names = [];
        foreach (DiagramLabel label in layout.Labels.OrderBy(l => l.Anchor, StringComparer.Ordinal).ThenBy(l => Math.Round(l.X)).ThenBy(l => l.Y))
        {
            if (names.Count > 0 && names[^1][^1] is var last && last.Anchor == label.Anchor && Math.Abs(last.X - label.X) < 1 && label.Box.Low - last.Box.High < Between * label.Box.Height)
            {
                names[^1].Add(label);
            }
            else
            {
                names.Add([label]);
            }
        }

        Bounds[] boxes = [.. names.Select(n => n.Select(l => l.Box).Aggregate((a, b) => a.Union(b)))];
        ILookup<int, DiagramPart> parts = layout.Parts.Where(_ => boxes.Length > 0).Select(p => (Part: p, Name: Enumerable.Range(0, boxes.Length).MinBy(i => boxes[i].DistanceTo(p.Box))))
            .Where(p => boxes[p.Name].DistanceTo(p.Part.Box) <= Beside).ToLookup(p => p.Name, p => p.Part);
        return
        [
            .. names.Select((n, i) => new DiagramCluster(parts[i].Select(p => p.Box).Aggregate(boxes[i], (a, b) => a.Union(b)), [.. n], [.. parts[i]]))
                .Where(c => c.Labels.Length + c.Parts.Length > 1),
        ];
    }
}
