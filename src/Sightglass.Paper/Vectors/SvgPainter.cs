using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using PdfSharp.Drawing;
using Sightglass.Paper.Pdf;

namespace Sightglass.Paper.Vectors;

/// <summary>
/// Paints a drawing of this program on a page: paths stay paths, words stay words in the paper's own typefaces. It knows what our drawings use
/// and no more: paths, boxes, circles, lines, words, groups moved and turned, hatches, clips.
/// </summary>
internal sealed partial class SvgPainter
{
    private readonly XGraphics _page;
    private readonly XElement _root;
    private readonly LookRules _look = LookRules.Print;
    private readonly Dictionary<string, XElement> _named;

    /// <summary>What is seen of the drawing, in the coordinates of the words being painted: the innermost box with an edge of its own.</summary>
    private XRect _seen;

    private SvgPainter(XGraphics page, XElement root)
    {
        _page = page;
        _root = root;
        _seen = BoxOf(root);
        _named = root.Descendants().Where(e => e.Attribute("id") is not null).GroupBy(e => (string)e.Attribute("id")!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
    }

    /// <summary>Width and height of a drawing in pixels.</summary>
    public static (double Width, double Height) SizeOf(string svg) => Box(Read(svg)) is var (_, _, w, h) ? (w, h) : default;

    /// <summary>The least size of words that are named on a drawing, in its own pixels; infinite where there are none. Letters that are painted on the machine itself are part of it.</summary>
    public static double LeastLetters(string svg)
    {
        XElement root = Read(svg);
        return Least(root, SvgStyle.Of(root, SvgStyle.Root, LookRules.Print));

        static double Least(XElement parent, SvgStyle style)
        {
            double least = double.PositiveInfinity;
            foreach (XElement element in parent.Elements())
            {
                SvgStyle own = SvgStyle.Of(element, style, LookRules.Print);
                if (IsUnpainted(element) || own.IsHidden)
                {
                    continue;
                }

                bool named = element.Name.LocalName == "text" && element.Value.Length > 0 && (string?)element.Attribute("class") != "letter";
                least = Math.Min(least, named ? own.FontSize : Least(element, own));
            }

            return least;
        }
    }

    /// <summary>Paints into a rectangle of the page, which has the drawing's shape.</summary>
    public static void Paint(XGraphics page, string svg, XRect into)
    {
        XElement root = Read(svg);
        (double x, double y, double width, double height) = Box(root);
        double scale = Math.Min(into.Width / width, into.Height / height);
        XGraphicsState state = page.Save();
        page.MultiplyTransform(new XMatrix(scale, 0, 0, scale, into.X - (x * scale), into.Y - (y * scale)));
        SvgPainter painter = new(page, root);
        painter.Children(root, SvgStyle.Of(root, SvgStyle.Root, painter._look), 1);
        page.Restore(state);
    }

    private static XElement Read(string svg) => XElement.Parse(svg);

    private static (double X, double Y, double Width, double Height) Box(XElement root) =>
        ((string?)root.Attribute("viewBox"))?.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray() is [var x, var y, var w, var h] ? (x, y, w, h) : (0, 0, 1, 1);

    private static XRect BoxOf(XElement element) => Box(element) is var (x, y, w, h) ? new(x, y, w, h) : default;

    private void Children(XElement parent, SvgStyle style, double opacity)
    {
        foreach (XElement element in parent.Elements())
        {
            Element(element, SvgStyle.Of(element, style, _look), opacity);
        }
    }

    private void Element(XElement element, SvgStyle style, double opacity)
    {
        string sort = element.Name.LocalName;
        if (IsUnpainted(element) || style.IsHidden)
        {
            return;
        }

        opacity *= style.Length("opacity", 1);
        XGraphicsState? state = Moved(element, style);
        if (Reference(style["clip-path"]) is { } clip && clip.Elements().Select(SvgShape.Of).OfType<SvgShape>().FirstOrDefault() is { } edge)
        {
            state ??= _page.Save();
            _page.IntersectClip(edge.Area);
        }

        if (sort == "svg")
        {
            Inner(element, style, opacity);
        }
        else if (sort == "g")
        {
            Children(element, style, opacity);
        }
        else if (sort == "text")
        {
            Words(element, style, opacity);
        }
        else if (SvgShape.Of(element) is { } shape)
        {
            Fill(shape.Area, style, opacity);
            if (SvgInk.Pen(style, opacity) is { } pen)
            {
                foreach (XGraphicsPath line in shape.Lines)
                {
                    _page.DrawPath(pen, line);
                }
            }
        }

        if (state is not null)
        {
            _page.Restore(state);
        }
    }

    private static bool IsUnpainted(XElement element) => element.Name.LocalName is "defs" or "pattern" or "clipPath" or "title" or "style" or "mask";

    /// <summary>A drawing within the drawing, of which its own box is seen and nothing else.</summary>
    private void Inner(XElement element, SvgStyle style, double opacity)
    {
        XRect box = BoxOf(element);
        double scale = SvgShape.N(element, "width") is > 0 and var wide ? wide / box.Width : 1;
        (XRect around, XGraphicsState state) = (_seen, _page.Save());
        _page.MultiplyTransform(new XMatrix(scale, 0, 0, scale, SvgShape.N(element, "x") - (box.X * scale), SvgShape.N(element, "y") - (box.Y * scale)));
        _page.IntersectClip(box);
        _seen = box;
        Children(element, style, opacity);
        _seen = around;
        _page.Restore(state);
    }

    private void Fill(XGraphicsPath shape, SvgStyle style, double opacity)
    {
        if (Reference(style["fill"]) is { Name.LocalName: "pattern" } pattern)
        {
            Hatch(shape, pattern, opacity);
        }
        else if (Reference(style["fill"]) is { Name.LocalName: "linearGradient" or "radialGradient" } gradient)
        {
            if (SvgInk.Middle(gradient, opacity) is { } middle)
            {
                _page.DrawPath(new XSolidBrush(middle), shape);
            }
        }
        else if (SvgInk.Brush(style, opacity) is { } brush)
        {
            _page.DrawPath(brush, shape);
        }
    }

    /// <summary>A pattern's one line, repeated across the shape: its tile turned, as often as the drawing is large.</summary>
    private void Hatch(XGraphicsPath shape, XElement pattern, double opacity)
    {
        double step = SvgShape.N(pattern, "width");
        double angle = Turn().Match((string?)pattern.Attribute("patternTransform") ?? "") is { Success: true } turn ? double.Parse(turn.Groups["angle"].Value, CultureInfo.InvariantCulture) : 0;
        XPen[] pens = [.. pattern.Elements().Select(e => SvgInk.Pen(SvgStyle.Of(e, SvgStyle.Root, _look), opacity * 0.6)).OfType<XPen>()];
        if (step <= 0 || pens.Length == 0)
        {
            return;
        }

        (double x, double y, double w, double h) = Box(_root);
        double reach = w + h;
        XGraphicsState state = _page.Save();
        _page.IntersectClip(shape);
        _page.RotateAtTransform(angle, new XPoint(x + (w / 2), y + (h / 2)));
        for (double at = -reach / 2; at < reach / 2; at += step)
        {
            _page.DrawLine(pens[^1], x + (w / 2) + at, y + (h / 2) - (reach / 2), x + (w / 2) + at, y + (h / 2) + (reach / 2));
        }

        _page.Restore(state);
    }

    private void Words(XElement element, SvgStyle style, double opacity)
    {
        string text = element.Value;
        if (text.Length == 0 || SvgInk.Brush(style, opacity) is not { } brush)
        {
            return;
        }

        PaperFace face = PdfFonts.FaceOf(style.IsSerif, style.IsItalic, style.FontWeight);
        double size = style.FontSize;
        double apart = style.Length("letter-spacing", 0);
        double width = PdfFonts.Width(text, face, size) + (apart * text.Length);
        double x = SvgShape.N(element, "x") - (style["text-anchor"] switch { "middle" => width / 2, "end" => width, _ => 0 });
        double y = SvgShape.N(element, "y");
        if (_seen != BoxOf(_root) && (x < _seen.Left || x + width > _seen.Right) && width <= _seen.Width)
        {
            return; // cut off by the edge of a piece; whole in another one
        }

        if (style.HasHalo)
        {
            _page.DrawRectangle(XBrushes.White, x - 2, y - (size * 0.78), width + 4, size);
        }

        XFont font = PdfFonts.Font(face, size);
        if (apart == 0)
        {
            _page.DrawString(PdfFonts.Drawn(text), font, brush, x, y);
            return;
        }

        foreach (char letter in PdfFonts.Drawn(text))
        {
            _page.DrawString(letter.ToString(), font, brush, x, y);
            x += PdfFonts.Width(letter.ToString(), face, size) + apart;
        }
    }

    /// <summary>Moves and turns what follows as the element says; the state to go back to, or null where it says nothing.</summary>
    private XGraphicsState? Moved(XElement element, SvgStyle style)
    {
        string[] moves = [(string?)element.Attribute("transform") ?? "", element.Attribute("transform") is null ? style["transform"] : ""];
        XGraphicsState? state = null;
        foreach (Match move in moves.SelectMany(m => Move().Matches(m)))
        {
            double[] n = [.. Number().Matches(move.Groups["numbers"].Value).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
            state ??= _page.Save();
            double[] origin = [.. Number().Matches(style["transform-origin"]).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
            switch (move.Groups["sort"].Value)
            {
                case "translate":
                    _page.TranslateTransform(n[0], n.Length > 1 ? n[1] : 0);
                    break;
                case "scale":
                    _page.ScaleTransform(n[0], n.Length > 1 ? n[1] : n[0]);
                    break;
                case "rotate":
                    _page.RotateAtTransform(n[0], n.Length > 2 ? new(n[1], n[2]) : origin.Length > 1 ? new(origin[0], origin[1]) : new(0, 0));
                    break;
            }
        }

        return state;
    }

    private XElement? Reference(string value) => Named().Match(value) is { Success: true } name ? _named.GetValueOrDefault(name.Groups["id"].Value) : null;

    [GeneratedRegex(@"(?<sort>translate|scale|rotate)\((?<numbers>[^)]*)\)")]
    private static partial Regex Move();

    [GeneratedRegex(@"-?\d*\.?\d+")]
    private static partial Regex Number();

    [GeneratedRegex(@"rotate\((?<angle>-?[\d.]+)")]
    private static partial Regex Turn();

    [GeneratedRegex(@"url\(#(?<id>[^)]+)\)")]
    private static partial Regex Named();
}
