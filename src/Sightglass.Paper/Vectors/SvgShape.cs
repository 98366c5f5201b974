using System.Globalization;
using System.Xml.Linq;
using PdfSharp.Drawing;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Paper.Vectors;

/// <summary>An element of a drawing as paths.</summary>
/// <param name="Area">What is filled: every stretch closed.</param>
/// <param name="Lines">What is drawn: each stretch alone, because the library would join one to the next.</param>
internal sealed record SvgShape(XGraphicsPath Area, IReadOnlyList<XGraphicsPath> Lines)
{
    /// <summary>Control distance of a quarter of a circle.</summary>
    private const double Quarter = 0.5522847498;

    /// <summary>The outline of an element; null for one that has none.</summary>
    public static SvgShape? Of(XElement element) => element.Name.LocalName switch
    {
        "path" => OfData((string?)element.Attribute("d") ?? ""),
        "rect" => Whole(OfRect(element)),
        "circle" => Whole(OfEllipse(N(element, "cx"), N(element, "cy"), N(element, "r"), N(element, "r"))),
        "ellipse" => Whole(OfEllipse(N(element, "cx"), N(element, "cy"), N(element, "rx"), N(element, "ry"))),
        "line" => Whole(OfLine(N(element, "x1"), N(element, "y1"), N(element, "x2"), N(element, "y2"))),
        _ => null,
    };

    public static double N(XElement element, string name) =>
        double.TryParse((string?)element.Attribute(name), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : 0;

    private static SvgShape Whole(XGraphicsPath path) => new(path, [path]);

    private static SvgShape OfData(string data)
    {
        XGraphicsPath area = new() { FillMode = XFillMode.Winding };
        List<XGraphicsPath> lines = [];
        XPoint here = default;
        XPoint start = default;
        foreach (PathSegment segment in PathData.Read(data, out _).Segments)
        {
            IReadOnlyList<double> n = segment.Numbers;
            XPoint to = n.Count > 1 ? new(n[^2], n[^1]) : start;
            if (segment.Command == 'M')
            {
                if (lines.Count > 0)
                {
                    area.CloseFigure();
                }

                lines.Add(new XGraphicsPath());
                start = to;
            }
            else
            {
                Add(area, segment.Command, n, here, to);
                Add(lines[^1], segment.Command, n, here, to);
            }

            here = to;
        }

        return new SvgShape(area, lines);
    }

    private static void Add(XGraphicsPath path, char command, IReadOnlyList<double> n, XPoint here, XPoint to)
    {
        switch (command)
        {
            case 'L':
                path.AddLine(here, to);
                break;
            case 'C':
                path.AddBezier(here, new(n[0], n[1]), new(n[2], n[3]), to);
                break;
            case 'Q':
                path.AddBezier(here, Between(here, new(n[0], n[1])), Between(to, new(n[0], n[1])), to);
                break;
            case 'A':
                Arc(path, here, n, to);
                break;
            default:
                path.CloseFigure();
                break;
        }
    }

    private static XPoint Between(XPoint end, XPoint control) => new(end.X + (2.0 / 3 * (control.X - end.X)), end.Y + (2.0 / 3 * (control.Y - end.Y)));

    private static XGraphicsPath OfRect(XElement element)
    {
        (double x, double y, double w, double h) = (N(element, "x"), N(element, "y"), N(element, "width"), N(element, "height"));
        double r = Math.Min(N(element, "rx"), Math.Min(w, h) / 2);
        XGraphicsPath path = new();
        if (r > 0)
        {
            path.AddRoundedRectangle(x, y, w, h, 2 * r, 2 * r);
        }
        else
        {
            path.AddRectangle(x, y, w, h);
        }

        return path;
    }

    private static XGraphicsPath OfEllipse(double x, double y, double rx, double ry)
    {
        (double kx, double ky) = (Quarter * rx, Quarter * ry);
        XGraphicsPath path = new();
        path.AddBezier(new(x + rx, y), new(x + rx, y + ky), new(x + kx, y + ry), new(x, y + ry));
        path.AddBezier(new(x, y + ry), new(x - kx, y + ry), new(x - rx, y + ky), new(x - rx, y));
        path.AddBezier(new(x - rx, y), new(x - rx, y - ky), new(x - kx, y - ry), new(x, y - ry));
        path.AddBezier(new(x, y - ry), new(x + kx, y - ry), new(x + rx, y - ky), new(x + rx, y));
        path.CloseFigure();
        return path;
    }

    private static XGraphicsPath OfLine(double x1, double y1, double x2, double y2)
    {
        XGraphicsPath path = new();
        path.AddLine(x1, y1, x2, y2);
        return path;
    }

    /// <summary>An arc from end to end, as SVG has it, in pieces of at most a quarter (W3C SVG 2, implementation notes, from memory).</summary>
    private static void Arc(XGraphicsPath path, XPoint from, IReadOnlyList<double> n, XPoint to)
    {
        (double rx, double ry, double turn) = (Math.Abs(n[0]), Math.Abs(n[1]), n[2] * Math.PI / 180);
        if (rx == 0 || ry == 0 || from == to)
        {
            path.AddLine(from, to);
            return;
        }

        (double sin, double cos) = Math.SinCos(turn);
        double dx = (from.X - to.X) / 2;
        double dy = (from.Y - to.Y) / 2;
        double x = (cos * dx) + (sin * dy);
        double y = (cos * dy) - (sin * dx);
        double grow = Math.Sqrt(Math.Max(1, (x * x / (rx * rx)) + (y * y / (ry * ry))));
        (rx, ry) = (rx * grow, ry * grow);
        double left = (rx * rx * ry * ry) - (rx * rx * y * y) - (ry * ry * x * x);
        double s = Math.Sqrt(Math.Max(0, left) / ((rx * rx * y * y) + (ry * ry * x * x))) * (n[3] == n[4] ? -1 : 1);
        double cx = s * rx * y / ry;
        double cy = -s * ry * x / rx;
        double a = Math.Atan2((y - cy) / ry, (x - cx) / rx);
        double sweep = Math.Atan2((-y - cy) / ry, (-x - cx) / rx) - a;
        sweep += n[4] != 0 && sweep < 0 ? 2 * Math.PI : n[4] == 0 && sweep > 0 ? -2 * Math.PI : 0;
        int pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2) - 1e-9));
        double piece = sweep / pieces;
        double k = 4.0 / 3 * Math.Tan(piece / 4);
        XPoint last = from;
        for (int i = 0; i < pieces; i++, a += piece)
        {
            (double s0, double c0) = Math.SinCos(a);
            (double s1, double c1) = Math.SinCos(a + piece);
            XPoint end = i == pieces - 1 ? to : At(c1, s1);
            path.AddBezier(last, At(c0 - (k * s0), s0 + (k * c0)), At(c1 + (k * s1), s1 - (k * c1)), end);
            last = end;
        }

        XPoint At(double ux, double uy)
        {
            (double px, double py) = (cx + (rx * ux), cy + (ry * uy));
            return new(((from.X + to.X) / 2) + (cos * px) - (sin * py), ((from.Y + to.Y) / 2) + (sin * px) + (cos * py));
        }
    }
}
