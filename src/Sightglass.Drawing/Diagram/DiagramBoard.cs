using System.Collections.Immutable;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Diagram;

/// <summary>The drawing board while a diagram is laid out.</summary>
internal sealed class DiagramBoard(DiagramOptions options)
{
    public double LabelSize => options.LabelSize;

    /// <summary>From base line to base line.</summary>
    public double LineHeight => Math.Ceiling(LabelSize * 1.25);

    public List<DiagramBody> Bodies { get; } = [];

    public List<DiagramPart> Parts { get; } = [];

    public List<DiagramPipe> Pipes { get; } = [];

    public List<DiagramCross> Crosses { get; } = [];

    public List<(double X, double Y)> Dots { get; } = [];

    public List<DiagramGlass> Glasses { get; } = [];

    public List<DiagramInstrument> Instruments { get; } = [];

    public List<DiagramOpenEnd> OpenEnds { get; } = [];

    public List<DiagramLabel> Labels { get; } = [];

    /// <summary>Ways that pipes will take which are not drawn yet.</summary>
    public List<ImmutableArray<(double X, double Y)>> Reserved { get; } = [];

    /// <summary>Where inner lines lie, for taps: name → point.</summary>
    public Dictionary<string, (double X, double Y)> LinePoints { get; } = new(StringComparer.Ordinal);

    public double Width(string text, bool strong = false) => TextMeasure.Width(text, strong ? TextFace.Sans600 : TextFace.Sans500, LabelSize);

    public DiagramPart Part(DiagramNode node, double x, double y, int turn)
    {
        DiagramPart part = new(node, x, y, turn);
        Parts.Add(part);
        return part;
    }

    /// <summary>Adds a stretch of pipe; <paramref name="medium"/> where it may be another than that of the drawing.</summary>
    public void Pipe(string name, IEnumerable<(double X, double Y)> points, IEnumerable<(string, int)> terms, string medium = "")
    {
        List<(double X, double Y)> corners = [];
        foreach ((double X, double Y) point in points)
        {
            if (corners.Count == 0 || corners[^1] != point)
            {
                corners.Add(point);
            }
        }

        if (corners.Count < 2)
        {
            return;
        }

        string id = Slug.Of(name);
        int same = Pipes.Count(p => p.Id == id || p.Id.StartsWith(id + "-n", StringComparison.Ordinal));
        Pipes.Add(new DiagramPipe(same == 0 ? id : $"{id}-n{same + 1}", [.. corners], [.. terms]) { Medium = medium });
    }

    /// <summary>Adds words; the box follows from the fonts; <paramref name="medium"/> where the line that they name may carry another than that of the drawing.</summary>
    public DiagramLabel Label(string text, string style, double x, double y, string anchor, string medium = "")
    {
        double width = WidthOf(text, style);
        double left = anchor switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
        double size = style == "body-words" ? LabelSize * 1.4 : LabelSize;
        DiagramLabel label = new(text, style, x, y, anchor, new Bounds(left, y - (size * 0.8), left + width, y + (size * 0.25))) { Medium = medium };
        Labels.Add(label);
        return label;
    }

    /// <summary>Keeps room for lines that a state writes, from the base line of the first.</summary>
    public void Reserve(double x, double y, double width, int lines) =>
        Labels.Add(new DiagramLabel("", "value", x, y, "start", new Bounds(x, y - (LabelSize * 0.8), x + width, y + ((lines - 1) * LineHeight) + (LabelSize * 0.25))));

    public double WidthOf(string text, string style) => style switch
    {
        "body-words" => TextMeasure.Width(text, TextFace.SerifItalic400, LabelSize * 1.4),
        "row-words" => TextMeasure.Width(text, TextFace.SerifItalic400, LabelSize * 1.1),
        "line-words" => TextMeasure.Width(text, TextFace.Sans600, LabelSize),
        _ => TextMeasure.Width(text, TextFace.Sans500, LabelSize),
    };

    /// <summary>Whether nothing stands within a box, pipes and dashed lines apart.</summary>
    public bool IsFree(Bounds box, double gap = 4) =>
        Solid().All(b => b.DistanceTo(box) >= gap);

    /// <summary>Whether no pipe and no dashed line passes through a box.</summary>
    public bool IsClearOfPipes(Bounds box, double gap = 3) => Pipes.Select(p => p.Points).Concat(Reserved).Concat(Instruments.SelectMany(i => i.Lines)).All(p => p.Zip(p.Skip(1))
        .All(s => new Bounds(Math.Min(s.First.X, s.Second.X), Math.Min(s.First.Y, s.Second.Y), Math.Max(s.First.X, s.Second.X), Math.Max(s.First.Y, s.Second.Y)).DistanceTo(box) >= gap));

    /// <summary>Whether a straight pipe would pass everything that stands.</summary>
    public bool IsOpen(double x1, double y1, double x2, double y2) =>
        IsFree(new Bounds(Math.Min(x1, x2), Math.Min(y1, y2), Math.Max(x1, x2), Math.Max(y1, y2)), 2);

    public IEnumerable<Bounds> Solid() =>
        [.. Bodies.Select(b => b.Box), .. Parts.Select(p => p.Box), .. Labels.Select(l => l.Box), .. Instruments.Select(i => i.Box), .. Glasses.Select(GlassBox)];

    /// <summary>What is on the board, as the layout of a network on a sheet.</summary>
    public DiagramLayout Layout(DiagramInput input, Bounds sheet) => new()
    {
        Input = input,
        Sheet = sheet,
        Bodies = [.. Bodies],
        Parts = [.. Parts],
        Pipes = [.. Pipes],
        Crosses = [.. Crosses],
        Dots = [.. Dots],
        Glasses = [.. Glasses],
        Instruments = [.. Instruments],
        OpenEnds = [.. OpenEnds],
        Labels = [.. Labels],
    };

    /// <summary>Tube, stubs and the words above.</summary>
    public static Bounds GlassBox(DiagramGlass glass) => glass.Left
        ? new Bounds(Math.Min(glass.X - 8, glass.Wall - 40), -18, glass.Wall, glass.Bottom + 2)
        : new Bounds(glass.Wall, -18, Math.Max(glass.X + 20, glass.Wall + 40), glass.Bottom + 2);
}
