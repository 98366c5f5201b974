using Sightglass.Basics.Language;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Ladder;

/// <summary>What the parts of a circuit drawing share.</summary>
internal sealed class LadderPen(SvgWriter writer, LadderLayout layout, DiagramValues values, LadderOptions options, string prefix)
{
    /// <summary>Words beside a part, by the size of letters.</summary>
    internal const double WordSize = 0.92;

    /// <summary>Where they begin, from the line of the part, pixels.</summary>
    internal const double WordsFrom = 24;

    /// <summary>How far a symbol reaches to its side, with the rays of a lamp, pixels.</summary>
    internal const double SymbolHalf = 18;

    private readonly LadderIds _ids = new(layout.Input);

    private double Size => options.LabelSize;

    /// <summary>A wire; the rails say their names, the others to who points at them.</summary>
    public void Bar(LadderBar bar)
    {
        string id = $"{prefix}w-{bar.Number}";
        writer.Open("g").Title(bar.Wire.Label)
            .Path(values[id, "class"], new SvgPath().Segment(bar.Left, bar.Y, bar.Right, bar.Y), ("id", id));
        if (bar.IsRail)
        {
            bool upper = layout.Rows.Any(r => Math.Abs(r.Low - bar.Y) < Math.Abs(r.High - bar.Y) && r.Low <= bar.Y && bar.Y <= r.High);
            writer.Text("line-words words-power", bar.Left, bar.Y + (upper ? -(Size * 0.55) : Size * 1.25), bar.Wire.Label, ("style", FontSize(1)));
        }
        else if (bar.Wire.IsFrame)
        {
            Ground(bar);
        }

        if (options.Truth)
        {
            // Below the bar, where the words of the part above do not come; of the frame above it, over its sign.
            double y = bar.Y + (bar.IsRail ? -(Size * 0.55) : bar.Wire.IsFrame ? -5 : Size);
            writer.Text("num-lab truth-num", bar.IsRail ? bar.Right : bar.Right + 6, y, values[$"{prefix}wv-{bar.Number}", DiagramDelta.Text], ("id", $"{prefix}wv-{bar.Number}"), ("text-anchor", bar.IsRail ? "end" : null), ("style", FontSize(WordSize)));
        }

        writer.Close().Break();
    }

    public void Rung(LadderRung rung)
    {
        string id = _ids[rung.Part.Id];
        double half = LadderSymbols.HalfOf(rung.Part.Symbol);
        SvgPath upper = new SvgPath().Segment(rung.X, rung.Top, rung.X, rung.Y - half);
        SvgPath lower = new SvgPath().Segment(rung.X, rung.Y + half, rung.X, rung.Bottom);
        writer.Path(values[$"{prefix}lu-{id}", "class"], upper, ("id", $"{prefix}lu-{id}"));
        writer.Path(values[$"{prefix}ld-{id}", "class"], lower, ("id", $"{prefix}ld-{id}"));
        SvgPath line = new SvgPath().Segment(rung.X, rung.Top, rung.X, rung.Y - half).Segment(rung.X, rung.Y + half, rung.X, rung.Bottom);
        writer.Path(values[$"{prefix}fl-{id}", "class"], line, ("id", $"{prefix}fl-{id}"));
        bool operated = options.Interactive && rung.Part.IsOperated;
        bool toggles = operated && rung.Part.Moves;
        writer.Open(
            "g",
            ("id", $"{prefix}it-{id}"),
            ("class", values[$"{prefix}it-{id}", "class"]),
            ("data-item", rung.Part.Id),
            ("role", toggles ? "switch" : operated ? "button" : "img"),
            ("tabindex", operated ? "0" : null),
            ("aria-checked", toggles ? values[$"{prefix}it-{id}", "aria-checked"] : null),
            ("aria-label", Say.Book(rung.Part.Id)),
            ("transform", $"translate({SvgNumber.Format(rung.X)} {SvgNumber.Format(rung.Y)})"));
        writer.Title(rung.Part.Label);
        writer.Element("circle", ("class", "tgt"), ("r", 23));
        LadderSymbols.Draw(writer, rung.Part.Symbol, rung.IsTurned);
        writer.Close();
        Words(rung, id);
        writer.Break();
    }

    private void Words(LadderRung rung, string id)
    {
        double x = rung.X + WordsFrom;
        double line = Size * 1.12;
        double y = rung.Y + (Size * 0.32) - ((rung.Words.Length - 1) * line / 2);
        foreach (string words in rung.Words)
        {
            writer.Text("d-lab", x, y, words, ("style", FontSize(WordSize)));
            y += line;
        }

        if (options.Truth)
        {
            writer.Text("num-lab truth-num", x, y + 1, values[$"{prefix}la-{id}", DiagramDelta.Text], ("id", $"{prefix}la-{id}"), ("style", FontSize(WordSize)));
        }
    }

    private void Ground(LadderBar bar)
    {
        double x = (bar.Left + bar.Right) / 2;
        SvgPath earth = new SvgPath().Segment(x, bar.Y, x, bar.Y + 8).Segment(x - 9, bar.Y + 8, x + 9, bar.Y + 8).Segment(x - 6, bar.Y + 12, x + 6, bar.Y + 12).Segment(x - 3, bar.Y + 16, x + 3, bar.Y + 16);
        writer.Path("d-line", earth);
        writer.Text("d-lab", x + 13, bar.Y + 16, bar.Wire.Label, ("style", FontSize(WordSize)));
    }

    private string FontSize(double factor) => $"font-size:{SvgNumber.Format(Size * factor)}px";
}
