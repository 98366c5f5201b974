using System.Collections.Immutable;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Shapes;

/// <summary>A path of a silhouette in metres, up positive: absolute commands only.</summary>
public sealed record PathData(ImmutableArray<PathSegment> Segments)
{
    public static readonly PathData Empty = new([]);

    /// <summary>Whether the last stretch is closed; an open path is drawn as a line, not filled.</summary>
    public bool IsClosed => !Segments.IsEmpty && Segments[^1].Command == 'Z';

    /// <summary>Where the path begins, or null for an empty one.</summary>
    public (double X, double Z)? Start => Segments.IsEmpty ? null : (Segments[0].Numbers[0], Segments[0].Numbers[1]);

    /// <summary>Reads SVG path data; what stands before an error is kept, as SVG has it.</summary>
    /// <param name="text">M L H V C S Q T A Z and their relative forms.</param>
    /// <param name="errorAt">Offset of the first character that could not be read, or null.</param>
    public static PathData Read(string text, out int? errorAt) => new PathReader(text).Read(out errorAt);

    /// <summary>The box round all points and control points, or null for an empty path.</summary>
    public Bounds? Box()
    {
        Bounds? box = null;
        foreach (PathSegment segment in Segments)
        {
            IReadOnlyList<double> n = segment.Numbers;
            double reach = segment.Command == 'A' ? Math.Max(n[0], n[1]) : 0;
            for (int i = segment.Command == 'A' ? 5 : 0; i + 1 < n.Count; i += 2)
            {
                Bounds point = new(n[i], n[i + 1] - reach, n[i], n[i + 1] + reach);
                box = box is null ? point : box.Value.Union(point);
            }
        }

        return box;
    }

    /// <summary>The path in pixels through a side's map.</summary>
    public SvgPath Draw(SideMap map)
    {
        SvgPath path = new();
        foreach (PathSegment segment in Segments)
        {
            IReadOnlyList<double> n = segment.Numbers;
            if (segment.Command == 'A')
            {
                double sweep = map.Mirrored ? n[4] : 1 - n[4];
                double turn = map.Mirrored ? n[2] : -n[2];
                path.Add('A', n[0] * map.Scale, n[1] * map.Scale, turn, n[3], sweep, map.X(n[5]), map.Y(n[6]));
            }
            else if (segment.Command == 'Z')
            {
                path.Close();
            }
            else
            {
                double[] points = new double[n.Count];
                for (int i = 0; i < n.Count; i += 2)
                {
                    points[i] = map.X(n[i]);
                    points[i + 1] = map.Y(n[i + 1]);
                }

                path.Add(segment.Command, points);
            }
        }

        return path;
    }
}
