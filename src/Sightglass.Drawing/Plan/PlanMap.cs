using Sightglass.Book.Model;

namespace Sightglass.Drawing.Plan;

/// <summary>From metres to the pixels of a plan view: x to the right, y of the class upwards.</summary>
internal readonly record struct PlanMap(double Left, double Middle, double Scale, double Height)
{
    private const double Margin = 22;

    public static PlanMap Of(ClassBook book, double width)
    {
        IEnumerable<Point3> places = book.Places.Values.Where(p => p.Position.X > -4 && p.Position.X < book.Length + 4).Select(p => p.Position);
        double first = Math.Min(0, places.Select(p => p.X).DefaultIfEmpty(0).Min());
        double last = Math.Max(book.Length, places.Select(p => p.X).DefaultIfEmpty(0).Max());
        double side = Math.Max(book.Width / 2, places.Select(p => Math.Min(Math.Abs(p.Y), 6)).DefaultIfEmpty(0).Max());
        double scale = (width - Margin) / Math.Max(last - first, 1);
        return new PlanMap((Margin / 2) - (first * scale), (side * scale) + Margin, scale, 2 * ((side * scale) + Margin));
    }

    public (double X, double Y) Point(Point3 p) => (Left + (p.X * Scale), Middle - (p.Y * Scale));
}
