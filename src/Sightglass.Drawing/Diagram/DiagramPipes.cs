using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Diagram;

/// <summary>Draws pipes, what moves in them, joints and open ends.</summary>
internal static class DiagramPipes
{
    public static void Draw(DiagramPen pen)
    {
        SvgWriter w = pen.Writer;
        string medium = pen.Layout.Input.Medium;
        w.Open("g", ("class", "pipes"));
        foreach (DiagramPipe pipe in pen.Layout.Pipes)
        {
            MediumLine.Draw(w, pipe.Medium.Length > 0 ? pipe.Medium : medium, new SvgPath().Polyline(pipe.Points));
        }

        foreach (DiagramPipe pipe in pen.Layout.Pipes)
        {
            string id = pen.PipeId(pipe);
            w.Path(pen.Value(id, "class"), new SvgPath().Polyline(pipe.Points), ("id", id));
        }

        foreach ((double x, double y) in pen.Layout.Dots)
        {
            w.Element("circle", ("class", "joint joint-" + medium), ("cx", x), ("cy", y), ("r", 3.6));
        }

        foreach (DiagramOpenEnd end in pen.Layout.OpenEnds)
        {
            double tip = end.Y + (end.Down ? 5 : -5);
            w.Path("d-line", new SvgPath().Polyline([(end.X - 4.5, end.Y - (end.Down ? 1 : -1)), (end.X, tip), (end.X + 4.5, end.Y - (end.Down ? 1 : -1))]));
        }

        w.Close().Break();
    }
}
