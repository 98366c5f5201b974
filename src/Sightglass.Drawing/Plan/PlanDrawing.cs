using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Svg;
using Sightglass.Drawing.Text;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Plan;

/// <summary>The machine from above, front to the left and so its right side up, with the places and the way walked; of a train the vehicle where the person stands.</summary>
public static class PlanDrawing
{
    /// <summary>Size of a stop's number, and radius of its mark, in sizes of labels.</summary>
    public const double NumberSize = 0.885;

    private const double NumberRadius = 9.0 / 13;

    /// <summary>The plan view as SVG.</summary>
    public static string Render(ClassBook book, PlanOptions? options = null, SvgOptions? svg = null)
    {
        options ??= new PlanOptions();
        WalkRoute route = WalkRoute.Of(book);
        ImmutableArray<Vehicle> vehicles = book.Vehicles.Length > 1 ? book.Vehicles : [Vehicle.Alone with { From = book.Front, To = book.Front + book.Length }];
        Vehicle? shown = vehicles.Length == 1 ? vehicles[0]
            : options.CurrentPlace is { } at && book.Places.TryGetValue(at, out Place? place) ? vehicles.FirstOrDefault(v => v.Index == place.Vehicle.Index) : null;
        PlanMap map = PlanMap.Of(book, options.Width, shown);
        string words = options.CurrentPlace is { } standing ? Say.With($"Plan view of {book.Title}, front to the left: {standing}") : Say.With($"Plan view of {book.Title}, front to the left");
        SvgWriter w = SvgDocument.Begin(svg ?? SvgOptions.Inline, "plan", 0, 0, options.Width, map.Height, words);
        foreach (Vehicle vehicle in vehicles)
        {
            Body(w, PlanBody.Of(book, vehicle), book.Width / 2, map);
        }

        Inside(w, book, map, options);
        if (options.Way.IsEmpty)
        {
            Way(w, book, map, route, options);
        }

        foreach (Leg leg in book.Legs.Where(l => book.Places.ContainsKey(l.From) && book.Places.ContainsKey(l.To)))
        {
            (double x1, double y1) = map.Point(book.Places[leg.From].Position);
            (double x2, double y2) = map.Point(book.Places[leg.To].Position);
            w.Path("plan-leg", new SvgPath().Segment(x1, y1, x2, y2));
        }

        if (!options.Way.IsEmpty)
        {
            w.Path("plan-walked", new SvgPath().Polyline([.. options.Way.Select(p => map.Point(book.Places[p].Position))]));
        }

        foreach (WalkStop stop in route.Stops)
        {
            Stop(w, map, stop, options);
        }

        return SvgDocument.End(w);
    }

    private static void Body(SvgWriter w, PlanBody body, double half, PlanMap map)
    {
        SvgPath outline = new();
        (double X, double Y) P(double x, double y) => map.Point(new Point3(x, y, 0));
        void Corner((double X, double Y) control, (double X, double Y) to) => outline.Quadratic(control.X, control.Y, to.X, to.Y);
        (double x0, double y0) = P(body.Front, -half * body.FrontFlat);
        outline.Move(x0, y0);
        (double x1, double y1) = P(body.Front, half * body.FrontFlat);
        outline.Line(x1, y1);
        Corner(P(body.Front, half), P(body.Front + body.FrontTaper, half));
        (double x2, double y2) = P(body.Rear - body.RearTaper, half);
        outline.Line(x2, y2);
        Corner(P(body.Rear, half), P(body.Rear, half * body.RearFlat));
        (double x3, double y3) = P(body.Rear, -half * body.RearFlat);
        outline.Line(x3, y3);
        Corner(P(body.Rear, -half), P(body.Rear - body.RearTaper, -half));
        (double x4, double y4) = P(body.Front + body.FrontTaper, -half);
        outline.Line(x4, y4);
        Corner(P(body.Front, -half), (x0, y0));
        w.Path("d-out", outline.Close());
        if (body.Glass is { } glass)
        {
            (double tip, double middle) = P(glass.Tip, 0);
            (double back, double upper) = P(glass.Back, half * 0.96);
            (_, double lower) = P(0, -half * 0.96);
            w.Path("d-det", new SvgPath().Polyline([(back, upper), (tip, middle), (back, lower)]));
        }
    }

    private static void Inside(SvgWriter w, ClassBook book, PlanMap map, PlanOptions options)
    {
        foreach (Item tank in book.Items.Values.Where(i => i.Kind.Role == KindRole.Store && i.Kind.Symbol == "tank" && i.Position is not null))
        {
            w.Path("plan-tank", Tank(map, tank, book.Width));
        }

        double y = map.Height - 5;
        w.Path("d-arrow", new SvgPath().Segment(20, y - 4, 4, y - 4).Polyline([(9, y - 7.5), (4, y - 4), (9, y - 0.5)])).Text("plan-front", 25, y, Say.It("front"), ("style", FontSize(options, 1)));
    }

    // As large as its parameters say; a metre square where they say nothing.
    private static SvgPath Tank(PlanMap map, Item tank, double machineWidth)
    {
        double Of(string name) => tank.Parameters.TryGetValue(name, out ParameterValue? value) ? value.Number : 0;
        double length = Of("length");
        double width = Of("width") > 0 ? Of("width") : Of("radius") > 0 ? 2 * Of("radius") : machineWidth * 0.8;
        if (length <= 0)
        {
            length = Of("floor area") > 0 ? Of("floor area") / width : Of("radius") > 0 ? 2 * Of("radius") : 1.1;
        }

        Point3 p = tank.Position!.Value;
        (double x, double y) = map.Point(new Point3(p.X - (length / 2), p.Y + (width / 2), 0));
        return new SvgPath().Rectangle(x, y, length * map.Scale, width * map.Scale);
    }

    private static void Way(SvgWriter w, ClassBook book, PlanMap map, WalkRoute route, PlanOptions options)
    {
        ImmutableArray<WalkStop> ground = [.. route.Stops.Where(s => s.Place.OnGround)];
        if (ground.Length < 2)
        {
            return;
        }

        PlanWay way = new(book, map, ground);
        w.Path("plan-way", way.Path(0, ground.Length - 1));
        WalkStop? here = route.Find(options.CurrentPlace);
        string? last = here is null ? null : here.Place.OnGround ? here.Place.Name : here.EnteredFrom;
        int at = ground.IndexOf(ground.FirstOrDefault(s => s.Place.Name == last)!);
        if (at > 0)
        {
            w.Path("plan-walked", way.Path(0, at));
        }
    }

    private static void Stop(SvgWriter w, PlanMap map, WalkStop stop, PlanOptions options)
    {
        (double x, double y) = map.Point(stop.Place.Position);
        bool here = stop.Place.Name == options.CurrentPlace;
        if (options.Numbers.TryGetValue(stop.Place.Name, out string? number))
        {
            w.Open("g", ("data-place", stop.Place.Name)).Title(Say.Book(stop.Place.Name)).Element("circle", ("class", "plan-stop been"), ("cx", x), ("cy", y), ("r", NumberRadius * options.LabelSize))
                .Text("plan-number", x, y + (4 * options.LabelSize / 13), number, ("text-anchor", "middle"), ("style", FontSize(options, NumberSize))).Close();
            return;
        }

        bool been = here || options.Visited.Contains(stop.Place.Name);
        w.Open("g", ("data-place", stop.Place.Name)).Title(Say.Book(stop.Place.Name))
            .Element("circle", ("class", been ? "plan-stop been" : "plan-stop"), ("cx", x), ("cy", y), ("r", here ? 5.5 : stop.Place.OnGround ? 3 : 2)).Close();
        if (here && options.You.Length > 0)
        {
            double half = TextMeasure.Width(options.You, TextFace.Sans600, 13) / 2;
            w.Text("plan-you", Math.Clamp(x, half + 2, options.Width - half - 2), y < map.Height / 2 ? y - 10 : y + 19, options.You, ("text-anchor", "middle"));
        }
    }

    /// <summary>Null where the look's own sizes are meant.</summary>
    private static string? FontSize(PlanOptions options, double factor) => options.LabelSize == 13 ? null : $"font-size:{SvgNumber.Format(options.LabelSize * factor)}px";
}
