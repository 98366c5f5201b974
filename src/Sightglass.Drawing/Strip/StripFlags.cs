using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Strip;

/// <summary>Draws items: mark, pole, flag, with areas to touch.</summary>
internal static class StripFlags
{
    private const double MarkTarget = 12;

    public static void Draw(SvgWriter w, StripLayout layout, StripItem item, StripOptions options, string prefix)
    {
        string style = "it" + (item.IsSelected ? " on" : "") + (item.IsHere ? " here" : "");
        string label = StripItems.Label(item.Item);
        w.Open(
            "g",
            ("class", style),
            ("id", $"{prefix}it-{Slug.Of(item.Item.Name)}"),
            ("data-item", item.Item.Name),
            ("role", options.Interactive ? "button" : null),
            ("tabindex", options.Interactive ? item.IsSelected ? "0" : "-1" : null),
            ("aria-label", options.Interactive ? label : null),
            ("aria-pressed", options.Interactive ? item.IsSelected ? "true" : "false" : null));
        if (item.Flag is { } flag)
        {
            Flag(w, layout, item, flag);
        }

        if (options.Interactive)
        {
            w.Element("circle", ("class", "hit"), ("cx", item.X), ("cy", item.Y), ("r", MarkTarget));
        }

        MediumMark.Draw(w, item.Medium, item.X, item.Y).Close().Break();
    }

    private static void Flag(SvgWriter w, StripLayout layout, StripItem item, StripFlag flag)
    {
        Bounds box = flag.Box;
        FlagPlace place = flag.Place;
        SvgPath pole = new SvgPath().Move(item.X, item.Y);
        if (Math.Abs(place.Pole - item.X) > 0.5)
        {
            pole.Vertical(flag.Bend).Line(place.Pole, flag.Bend + (flag.Up ? -12 : 12));
        }

        pole.Vertical(box.High);
        w.Path("d-lead", pole.Segment(box.Left, box.High, box.Right, box.High));
        w.Element("rect", ("class", "hit flag"), ("x", box.Left - 2), ("y", box.Low - 1), ("width", box.Width + 4), ("height", box.Height + 1));
        bool left = place.Direction == FlagDirection.Left;
        w.Text("d-lab", left ? box.Right - 5 : box.Left + 5, box.High - 4, flag.Text, ("text-anchor", left ? "end" : null), ("style", FontSize(layout)));
    }

    internal static string? FontSize(StripLayout layout) =>
        layout.LabelSize == 13 ? null : $"font-size:{SvgNumber.Format(layout.LabelSize)}px";
}
