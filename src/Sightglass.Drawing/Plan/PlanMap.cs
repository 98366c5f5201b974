using Sightglass.Book.Model;

namespace Sightglass.Drawing.Plan;

/// <summary>From metres to the pixels of a plan view: x to the right, y of the class upwards.</summary>
internal readonly record struct PlanMap(double Left, double Middle, double Scale, double Height)
{
    private const double Margin = 22;

    /// <param name="book">Its places.</param>
    /// <param name="width">Pixels.</param>
    /// <param name="vehicle">The vehicle to show, or null for all of them.</param>
    public static PlanMap Of(ClassBook book, double width, Vehicle? vehicle)
    {
        (double from, double to) = vehicle is null ? (book.Front, book.Front + book.Length) : (vehicle.From, vehicle.To);
        IEnumerable<Point3> places = book.Places.Values.Where(p => p.Position.X > from - 4 && p.Position.X < to + 4).Select(p => p.Position);
        double first = Math.Min(from, places.Select(p => p.X).DefaultIfEmpty(from).Min());
        double last = Math.Max(to, places.Select(p => p.X).DefaultIfEmpty(to).Max());
        double side = Math.Max(book.Width / 2, places.Select(p => Math.Min(Math.Abs(p.Y), 6)).DefaultIfEmpty(0).Max());
        double scale = (width - Margin) / Math.Max(last - first, 1);
        return new PlanMap((Margin / 2) - (first * scale), (side * scale) + Margin, scale, 2 * ((side * scale) + Margin));
    }

    public (double X, double Y) Point(Point3 p) => (Left + (p.X * Scale), Middle - (p.Y * Scale));
}
