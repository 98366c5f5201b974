using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>Finds the silhouettes of the vehicles that a side shows, each where it stands and as it faces.</summary>
internal static class StripFigures
{
    private const double BoxHeight = 4;

    public static ImmutableArray<StripFigure> Of(ClassBook book, SideMap side)
    {
        Vehicle[] vehicles = [.. book.Vehicles.Select(v => book.Vehicles.Length > 1 ? v : v with { From = book.Front, To = book.Front + book.Length }).OrderBy(v => v.From)];
        return side.Side switch
        {
            Side.Rear => [End(book, vehicles[^1], side)],
            Side.Front => [End(book, vehicles[0], side)],
            _ => [.. vehicles.Select(v => Long(book, v, side))],
        };
    }

    // A turned vehicle shows its other side, and its front lies at its other end.
    private static StripFigure Long(ClassBook book, Vehicle vehicle, SideMap side)
    {
        Side own = !vehicle.IsTurned ? side.Side : side.Side == Side.Right ? Side.Left : Side.Right;
        SideMap map = side with { Offset = side.X(vehicle.IsTurned ? vehicle.To : vehicle.From), Mirrored = side.Mirrored != vehicle.IsTurned };
        return new(map, Shapes(book, vehicle, own, (0, vehicle.To - vehicle.From)));
    }

    private static StripFigure End(ClassBook book, Vehicle vehicle, SideMap side)
    {
        Side own = !vehicle.IsTurned ? side.Side : side.Side == Side.Rear ? Side.Front : Side.Rear;
        return new(side with { Mirrored = side.Mirrored != vehicle.IsTurned }, Shapes(book, vehicle, own, (-book.Width / 2, book.Width / 2)));
    }

    private static ImmutableArray<StripShape> Shapes(ClassBook book, Vehicle vehicle, Side side, (double From, double To) box)
    {
        string number = vehicle.IsTheMachine ? book.RoadNumberInUse ?? "" : "";
        ImmutableArray<StripShape> own =
        [
            .. book.ClassOf(vehicle).Silhouettes.Where(s => s.Side == side).SelectMany(s => s.Shapes)
                .Select(s => new StripShape(s.Style, PathData.Read(s.Path, out _), s.Style == "lettering" ? (s.Text ?? "").Replace("{road number}", number, StringComparison.Ordinal) : null))
                .Where(s => !s.Path.Segments.IsEmpty),
        ];
        return own.IsEmpty ? [new("outline", PathData.Read(FormattableString.Invariant($"M {box.From} 0.3 H {box.To} V {BoxHeight} H {box.From} Z"), out _), null)] : own;
    }
}
