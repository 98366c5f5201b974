using Sightglass.Basics.Language;
using Sightglass.Drawing.Svg;
using M = Sightglass.Drawing.Diagram.DiagramMeasure;

namespace Sightglass.Drawing.Diagram;

/// <summary>What the parts of a diagram's drawing share.</summary>
internal sealed class DiagramPen(SvgWriter writer, DiagramLayout layout, DiagramValues values, DiagramOptions options, string prefix)
{
    private readonly DiagramIds _ids = new(layout.Input);

    public SvgWriter Writer => writer;

    public DiagramLayout Layout => layout;

    public DiagramOptions Options => options;

    public string Prefix => prefix;

    public string Id(string kind, string node) => $"{prefix}{kind}-{_ids[node]}";

    public string PipeId(DiagramPipe pipe) => $"{prefix}fl-{pipe.Id}";

    public string Value(string id, string attribute) => values[id, attribute];

    public string Reference(string id) => $"url(#{prefix}{id})";

    public string? FontSize(double factor = 1) => options.FontSize(factor);

    public void Definitions()
    {
        writer.Open("defs");
        if (options.Truth)
        {
            writer.Open("pattern", ("id", prefix + "truth"), ("width", 7), ("height", 7), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)"))
                .Element("path", ("class", "truth-hatch"), ("d", "M0 0V7")).Close();
        }

        foreach (DiagramBody tank in layout.Bodies.Where(b => b.Node.Role == DiagramRole.Tank && !b.Node.IsClosed))
        {
            writer.Open("clipPath", ("id", Id("cp", tank.Node.Id))).Element("path", ("d", DiagramBodies.TankShape(tank, 1).ToString())).Close();
        }

        writer.Close().Break();
    }

    /// <summary>Opens the group of a node: a switch or a button where it can be operated, else a picture with a name.</summary>
    public SvgWriter Group(DiagramNode node, params ReadOnlySpan<SvgAttribute> more)
    {
        string id = Id("it", node.Id);
        bool operated = options.Interactive && (node.IsOperated || node.Role == DiagramRole.Control);
        bool toggles = operated && node.IsSwitch;
        return writer.Open(
            "g",
            [
                ("id", id),
                ("class", Value(id, "class")),
                ("data-item", node.Id),
                ("role", toggles ? "switch" : operated ? "button" : "img"),
                ("tabindex", operated ? "0" : null),
                ("aria-checked", toggles ? Value(id, "aria-checked") : null),
                ("aria-label", Say.Book(node.Id)),
                .. more,
            ]);
    }
}
