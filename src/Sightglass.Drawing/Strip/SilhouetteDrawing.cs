using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Strip;

/// <summary>Draws one side's silhouette with as much detail as the scale bears.</summary>
internal static class SilhouetteDrawing
{
    /// <summary>Height of a capital in the serif face, a part of the font size.</summary>
    private const double CapitalHeight = 0.67;

    private const double OrdinaryLetter = 0.14;

    /// <summary>Metres that a curve may bulge beyond the points of its path, or a word beyond the middle of it.</summary>
    private const double Bulge = 0.5;

    private const double Lettered = 4;

    /// <param name="w">Takes it.</param>
    /// <param name="side">What is seen from there.</param>
    /// <param name="from">Left end, pixels, of what is wanted: shapes that lie wholly outside are left out.</param>
    /// <param name="to">Its right end.</param>
    public static void Draw(SvgWriter w, StripSide side, double from = double.NegativeInfinity, double to = double.PositiveInfinity)
    {
        w.Open("g", ("class", "loco"));
        foreach ((SideMap map, StripShape shape) in side.Figures.SelectMany(f => f.Shapes.Where(s => IsDrawn(s, f.Map.Scale) && IsWithin(s, f.Map, from, to)).Select(s => (f.Map, s))))
        {
            if (shape.Text is not null)
            {
                Letter(w, map, shape);
            }
            else
            {
                w.Path(Style(shape), shape.Path.Draw(map));
            }
        }

        w.Close();
    }

    private static bool IsDrawn(StripShape shape, double scale)
    {
        const double readable = 4;
        return shape.Style switch
        {
            "outline" => true,
            "lettering" => (LetterHeight(shape.Path) ?? OrdinaryLetter) * scale >= readable,
            "tint" or "detail" => scale >= 30,
            _ => scale >= 30 || Size(shape.Path) * scale >= 7,
        };
    }

    private static bool IsWithin(StripShape shape, SideMap map, double from, double to)
    {
        Bounds box = shape.Path.Box() ?? default;
        double bulge = (shape.Text is null ? Bulge : Lettered) * map.Scale;
        (double one, double other) = (map.X(box.Left), map.X(box.Right));
        return Math.Max(one, other) + bulge >= from && Math.Min(one, other) - bulge <= to;
    }

    private static double Size(PathData path)
    {
        Bounds box = path.Box() ?? default;
        return Math.Min(box.Width, box.Height);
    }

    // An open path is a line: it is never filled.
    private static string Style(StripShape shape) => shape.Style switch
    {
        "outline" => shape.Path.IsClosed ? "d-out" : "d-out d-open",
        "part" => shape.Path.IsClosed ? "d-part" : "d-line",
        "glass" => "d-glass",
        "solid" => "d-solid",
        "tint" => "d-tint",
        _ => "d-det",
    };

    private static double? LetterHeight(PathData path)
    {
        double height = path.Box()?.Height ?? 0;
        return height > 0 ? height : null;
    }

    private static void Letter(SvgWriter w, SideMap map, StripShape shape)
    {
        (double x, double z) = shape.Path.Start!.Value;
        double size = (LetterHeight(shape.Path) ?? OrdinaryLetter) * map.Scale / CapitalHeight;
        bool spaced = shape.Text!.Length > 6;
        double spacing = size * (spaced ? 0.38 : 0.08);
        w.Text(
            "letter",
            map.X(x) + (spacing / 2),
            map.Y(z),
            shape.Text,
            ("text-anchor", "middle"),
            ("style", $"font-size:{SvgNumber.Format(size)}px;letter-spacing:{SvgNumber.Format(spacing)}px"));
    }
}
