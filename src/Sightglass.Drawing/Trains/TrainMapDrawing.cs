using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Overview;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Trains;

/// <summary>Draws the map of a train: silhouettes on the rail, a value of each vehicle in rows below, and every line as it runs through from vehicle to vehicle, with a mark at each joint.</summary>
public static class TrainMapDrawing
{
    private const double Type = 13;
    private const double Row = 21;
    private const double Gap = 16;

    /// <summary>Least width of what stands before the rows.</summary>
    private const double Gutter = 60;

    /// <summary>How far an open line stands back from the joint.</summary>
    private const double Back = 9;

    /// <summary>The picture as SVG.</summary>
    public static string Render(TrainMap map, SvgOptions? svg = null)
    {
        ArgumentNullException.ThrowIfNull(map);
        svg ??= SvgOptions.Inline;
        double left = Gap + map.Rows.Select(r => r.Label).Concat(map.Lines.Select(l => l.Name)).Select(t => TextMeasure.Width(t, TextFace.Sans600, Type)).Append(Gutter).Max();
        double scale = (map.Width - left - 4) / map.Vehicles.Sum(v => v.Length);
        ImmutableArray<StripSide> sides = StripSides.Of(map.Book, new StripOptions { Scale = scale, Sides = [SideOf(map)] });
        double[] edges = Edges(map, left, scale);
        ImmutableArray<string>[] kinds = [.. map.Vehicles.Select((v, i) => Kind(v, edges[i + 1] - edges[i] - 6))];
        double top = StripSides.Height(sides) + 8, names = top + 20, rows = names + 18 + (16 * kinds.Max(k => k.Length)), lines = rows + (map.Rows.Length * Row) + (map.Rows.IsEmpty ? 0 : Gap);
        SvgWriter w = SvgDocument.Begin(svg, "chart", 0, 0, map.Width, lines + (map.Lines.Length * Row) + 6, map.Title);
        double pad = StripSides.Pad * scale;
        w.Open("g", ("transform", $"translate({SvgNumber.Format(left - pad)} {SvgNumber.Format(top)})"));
        OverviewDrawing.Silhouette(w, sides[0]);
        w.Path("mi-rail", new SvgPath().Segment(pad, 0, pad + map.Width - left - 4, 0));
        w.Close();
        Names(w, map, kinds, edges, names);
        for (int i = 0; i < map.Rows.Length; i++)
        {
            Values(w, map.Rows[i], edges, rows + (i * Row));
        }

        for (int i = 0; i < map.Lines.Length; i++)
        {
            Line(w, map.Lines[i], edges, lines + (i * Row));
        }

        return SvgDocument.End(w);
    }

    /// <summary>The side from which the head of the train is to the left.</summary>
    private static Side SideOf(TrainMap map) => map.Book.Vehicles.Length > 1 && map.Book.Vehicles[0].From > map.Book.Vehicles[^1].From ? Side.Right : Side.Left;

    private static double[] Edges(TrainMap map, double left, double scale)
    {
        double[] edges = new double[map.Vehicles.Length + 1];
        edges[0] = left;
        for (int i = 0; i < map.Vehicles.Length; i++)
        {
            edges[i + 1] = edges[i] + (map.Vehicles[i].Length * scale);
        }

        return edges;
    }

    /// <summary>What a vehicle is, in one line or two: that it is turned stands last and must not be cut off.</summary>
    private static ImmutableArray<string> Kind(TrainMapVehicle vehicle, double room)
    {
        IReadOnlyList<string> lines = TextMeasure.Wrap(vehicle.Kind, TextFace.Sans400, Type, room);
        return [.. lines.Take(1), .. lines.Count > 1 ? [string.Join(' ', lines.Skip(1))] : Array.Empty<string>()];
    }

    private static void Names(SvgWriter w, TrainMap map, ImmutableArray<string>[] kinds, double[] edges, double y)
    {
        for (int i = 0; i < map.Vehicles.Length; i++)
        {
            TrainMapVehicle v = map.Vehicles[i];
            (double middle, double room) = ((edges[i] + edges[i + 1]) / 2, edges[i + 1] - edges[i] - 6);
            w.Open("g").Title($"{v.Name}, {v.Kind}");
            w.Text(v.IsLead ? "d-lab strong" : "d-lab", middle, y, TextMeasure.Fit(v.Name, v.IsLead ? TextFace.Sans600 : TextFace.Sans500, Type, room), ("text-anchor", "middle"));
            for (int line = 0; line < kinds[i].Length; line++)
            {
                w.Text("c-lab", middle, y + (16 * (line + 1)), TextMeasure.Fit(kinds[i][line], TextFace.Sans400, Type, room), ("text-anchor", "middle"));
            }

            w.Close();
        }
    }

    private static void Values(SvgWriter w, TrainMapRow row, double[] edges, double y)
    {
        w.Path("c-grid", new SvgPath().Segment(0, y, edges[^1], y));
        w.Text("d-lab strong", 0, y + 15, row.Label);
        for (int i = 0; i < row.Values.Length; i++)
        {
            (string value, bool isBad) = row.Values[i];
            w.Text(isBad ? "num-lab t-bad strong" : "num-lab", (edges[i] + edges[i + 1]) / 2, y + 15, TextMeasure.Fit(value, TextFace.Sans500, Type, edges[i + 1] - edges[i] - 4), ("text-anchor", "middle"));
        }
    }

    private static void Line(SvgWriter w, TrainMapLine line, double[] edges, double y)
    {
        double at = y + 10;
        w.Text("d-lab", 0, y + 15, line.Name);
        for (int i = 0; i < line.Ends.Length; i++)
        {
            double middle = (edges[i] + edges[i + 1]) / 2;
            (bool head, bool rear) = line.Ends[i];
            double from = !head ? middle : edges[i] + StandsBack(line, i - 1), to = !rear ? middle : edges[i + 1] - StandsBack(line, i);
            if (head || rear)
            {
                MediumLine.Draw(w, line.Medium, new SvgPath().Segment(from, at, to, at));
            }

            Stop(w, head && StandsBack(line, i - 1) > 0, from, at);
            Stop(w, rear && StandsBack(line, i) > 0, to, at);
        }

        for (int i = 0; i < line.Joints.Length; i++)
        {
            Mark(w, line.Joints[i], edges[i + 1], at);
        }
    }

    /// <summary>Pixels by which a line stands back at the joint behind a vehicle; at the ends of the train as well.</summary>
    private static double StandsBack(TrainMapLine line, int joint) => joint >= 0 && joint < line.Joints.Length && line.Joints[joint] == JointMark.Through ? 0 : Back;

    /// <summary>Where a line ends, it is shut.</summary>
    private static void Stop(SvgWriter w, bool ends, double x, double y)
    {
        if (ends)
        {
            w.Path("d-line", new SvgPath().Segment(x, y - 6, x, y + 6));
        }
    }

    private static void Mark(SvgWriter w, JointMark mark, double x, double y)
    {
        switch (mark)
        {
            case JointMark.Through:
                w.Element("circle", ("class", "joint"), ("cx", x), ("cy", y), ("r", 3.4));
                break;
            case JointMark.Open or JointMark.Wrong:
                w.Path("t-bad-line", new SvgPath().Segment(x - 4.5, y - 4.5, x + 4.5, y + 4.5));
                w.Path("t-bad-line", new SvgPath().Segment(x - 4.5, y + 4.5, x + 4.5, y - 4.5));
                break;
        }
    }
}
