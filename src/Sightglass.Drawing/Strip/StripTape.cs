using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;

namespace Sightglass.Drawing.Strip;

/// <summary>Draws the ground tape: a tick a metre, a stop a place, seconds between, and the person.</summary>
internal static class StripTape
{
    public static void Draw(SvgWriter w, StripLayout layout, StripOptions options)
    {
        if (layout.Tape is not { } y)
        {
            return;
        }

        w.Open("g", ("class", "tape"));
        foreach (StripSide side in layout.Sides)
        {
            Ticks(w, side, y);
        }

        double from = layout.Sides[0].Left - (layout.Scale * 0.45);
        double to = layout.Sides[^1].Right + (layout.Scale * 0.45);
        w.Path("tape-line", new SvgPath().Segment(from, y, to, y));
        foreach (StripPace pace in layout.Paces)
        {
            w.Text("leg", pace.X, y - 6, $"{Math.Max(1, Math.Round(pace.Seconds, MidpointRounding.AwayFromZero)):0} s", ("text-anchor", "middle"), ("style", StripFlags.FontSize(layout)));
        }

        foreach (StripStop stop in layout.Stops)
        {
            Stop(w, layout, stop, options);
        }

        w.Close().Break();
    }

    /// <summary>The person where they stand, with the words below.</summary>
    public static void Person(SvgWriter w, StripLayout layout, StripOptions options)
    {
        if (layout.Here is not { } here)
        {
            return;
        }

        bool onTape = here.Stop.Place.OnGround;
        double feet = !onTape ? here.Y : layout.Tape is { } tape ? tape - 8 : layout.Ground;
        w.Open("g", ("class", "you")).Title(here.Said);
        PersonMark.Draw(w, here.X, feet, 1);
        if (layout.You is { } box)
        {
            w.Element("rect", ("class", "you-pill"), ("x", box.Left), ("y", box.Low), ("width", box.Width), ("height", box.Height), ("rx", box.Height / 2));
            w.Text("you-words", here.X, box.High - 5.5, options.You, ("text-anchor", "middle"), ("style", StripFlags.FontSize(layout)));
        }

        w.Close();
    }

    private static void Ticks(SvgWriter w, StripSide side, double y)
    {
        SvgPath ticks = new();
        SvgPath fives = new();
        double from = Math.Min(side.Map.Along(side.Left), side.Map.Along(side.Right));
        double to = Math.Max(side.Map.Along(side.Left), side.Map.Along(side.Right));
        for (int metre = (int)Math.Ceiling(from); metre <= Math.Floor(to + 1e-9); metre++)
        {
            double x = side.Map.X(metre);
            _ = metre % 5 == 0 ? fives.Segment(x, y, x, y + 9) : ticks.Segment(x, y, x, y + 4);
        }

        w.Path("tick", ticks).Path("tick-five", fives);
    }

    private static void Stop(SvgWriter w, StripLayout layout, StripStop stop, StripOptions options)
    {
        bool filled = stop.IsVisited || stop.IsCurrent;
        w.Open(
            "g",
            ("class", "stop" + (filled ? " been" : "") + (stop.IsCurrent ? " now" : "") + (stop.Stop.Place.OnGround ? "" : " inside")),
            ("data-place", stop.Name),
            ("role", options.Interactive ? "button" : null),
            ("tabindex", options.Interactive ? "-1" : null),
            ("aria-label", options.Interactive ? stop.Said : null),
            ("aria-current", stop.IsCurrent ? "location" : null));
        if (stop.Stop.Place.OnGround)
        {
            if (stop.Flag is { } flag && stop.Label is { } label)
            {
                Name(w, layout, stop, flag, label);
            }

            w.Element("circle", ("class", "stop-mark"), ("cx", stop.X), ("cy", stop.Y), ("r", 5.5));
        }
        else
        {
            w.Title(stop.Said).Element("circle", ("class", "stop-mark"), ("cx", stop.X), ("cy", stop.Y), ("r", 3));
        }

        w.Close();
    }

    private static void Name(SvgWriter w, StripLayout layout, StripStop stop, FlagPlace flag, Bounds label)
    {
        if (flag.Tier > 0 || flag.Direction != FlagDirection.Centre || Math.Abs(flag.Pole - stop.X) > 0.5)
        {
            w.Path("d-lead", new SvgPath().Move(stop.X, stop.Y + 6).Line(flag.Pole, stop.Y + 11).Vertical(label.Low + 2));
        }

        w.Element("rect", ("class", "hit"), ("x", label.Left), ("y", label.Low), ("width", label.Width), ("height", label.Height));
        double x = flag.Direction switch { FlagDirection.Left => label.Right, FlagDirection.Right => label.Left, _ => (label.Left + label.Right) / 2 };
        string anchor = flag.Direction switch { FlagDirection.Left => "end", FlagDirection.Right => "start", _ => "middle" };
        w.Text("d-lab place", x, label.High - 4, StripItems.Capital(stop.Said), ("text-anchor", anchor), ("style", StripFlags.FontSize(layout)));
    }
}
