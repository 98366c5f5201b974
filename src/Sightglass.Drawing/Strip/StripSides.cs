using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Strip;

/// <summary>Stands the sides beside each other so that the machine unrolls without mirroring.</summary>
internal static class StripSides
{
    /// <summary>Ground left free at both ends of the sheet, metres.</summary>
    public const double Pad = 1.2;

    /// <summary>Ground left free between two sides at least, metres; more where places stand further out.</summary>
    public const double Gap = 1.7;

    /// <summary>Ground left free between the outermost places of two sides, metres.</summary>
    private const double BetweenPlaces = 0.4;

    public static ImmutableArray<StripSide> Of(ClassBook book, StripOptions options)
    {
        WalkSides walk = new(book);
        IEnumerable<Side> order = walk.RunsLeft ? walk.Order.Reverse() : walk.Order;
        double at = Pad * options.Scale;
        ImmutableArray<StripSide>.Builder sides = ImmutableArray.CreateBuilder<StripSide>();
        double overhang = 0;
        foreach (Side side in order.Where(options.Sides.Contains))
        {
            double width = (side is Side.Right or Side.Left ? book.Length : book.Width) * options.Scale;
            (double before, double after) = Overhang(book, walk, side, width, options.Scale);
            at += sides.Count == 0 ? 0 : Math.Max(Gap * options.Scale, overhang + before + (BetweenPlaces * options.Scale));
            SideMap map = Map(book, side, at, options.Scale);
            sides.Add(new StripSide(map, at, at + width, StripFigures.Of(book, map)));
            at += width;
            overhang = after;
        }

        return sides.ToImmutable();
    }

    // How far ground places of a side stand beyond its outline, in pixels to the left and to the right.
    private static (double Before, double After) Overhang(ClassBook book, WalkSides walk, Side side, double width, double scale)
    {
        SideMap map = Map(book, side, 0, scale);
        double[] at = [.. book.Places.Values.Where(p => p.OnGround && walk.Of(p) == side).Select(p => map.X(WalkSides.Along(side, p.Position)))];
        return at.Length == 0 ? (0, 0) : (Math.Max(0, -at.Min()), Math.Max(0, at.Max() - width));
    }

    /// <summary>Highest point of all shapes above the rail, pixels.</summary>
    public static double Height(ImmutableArray<StripSide> sides) => sides
        .SelectMany(s => s.Figures.SelectMany(f => f.Shapes).Where(h => h.Text is null).Select(h => (h.Path.Box()?.High ?? 0) * s.Map.Scale))
        .DefaultIfEmpty(0).Max();

    // As seen from outside: the front is to the right on the right side, to the left on the left side;
    // y grows to the right seen from behind, to the left seen from ahead.
    private static SideMap Map(ClassBook book, Side side, double left, double scale) => side switch
    {
        Side.Right => new SideMap(side, left + ((book.Front + book.Length) * scale), 0, scale, true),
        Side.Left => new SideMap(side, left - (book.Front * scale), 0, scale, false),
        Side.Rear => new SideMap(side, left + (book.Width / 2 * scale), 0, scale, false),
        _ => new SideMap(side, left + (book.Width / 2 * scale), 0, scale, true),
    };
}
