using Sightglass.Basics.Language;
namespace Sightglass.Drawing.Svg;

/// <summary>Marks of media: colour and shape, so that hue alone never decides.</summary>
public static class MediumMark
{
    public static IReadOnlyList<(string Medium, string Words)> Legend =>
    [
        ("fuel", Say.It("fuel")),
        ("main", Say.It("main-reservoir air")),
        ("brake", Say.It("brake-pipe air")),
        ("power", Say.It("electric power")),
        ("control", Say.As("medium", "control")),
        ("water", Say.It("water, heat")),
    ];

    /// <summary>Square fuel, ring main air, barred ring brake air, diamond power, open square control, triangle water, dot anything else.</summary>
    public static SvgWriter Draw(SvgWriter writer, string medium, double x, double y)
    {
        string style = "mk mk-" + medium;
        return medium switch
        {
            "fuel" => writer.Path(style, new SvgPath().Rectangle(x - 3.2, y - 3.2, 6.4, 6.4)),
            "main" => writer.Element("circle", ("class", style), ("cx", x), ("cy", y), ("r", 3.4)),
            "brake" => writer.Element("circle", ("class", style), ("cx", x), ("cy", y), ("r", 3.4)).Path(style, new SvgPath().Segment(x - 3.4, y, x + 3.4, y)),
            "power" => writer.Path(style, new SvgPath().Polyline([(x, y - 4.6), (x + 4.6, y), (x, y + 4.6), (x - 4.6, y)]).Close()),
            "control" => writer.Path(style, new SvgPath().Rectangle(x - 3, y - 3, 6, 6)),
            "water" => writer.Path(style, new SvgPath().Polyline([(x, y - 4.4), (x + 4.4, y + 3.4), (x - 4.4, y + 3.4)]).Close()),
            _ => writer.Element("circle", ("class", "mk"), ("cx", x), ("cy", y), ("r", 2.4)),
        };
    }

    /// <summary>A small picture of a medium's line with its mark, 46 × 12 px, for a legend.</summary>
    public static string LegendLine(string medium)
    {
        SvgWriter writer = new();
        SvgPath line = new SvgPath().Segment(12, 6, 45, 6);
        writer.Open("svg", ("width", 46), ("height", 12), ("viewBox", "0 0 46 12"), ("aria-hidden", "true"));
        MediumLine.Draw(writer, medium, line);
        return Draw(writer, medium, 5, 6).Close().ToString();
    }
}
