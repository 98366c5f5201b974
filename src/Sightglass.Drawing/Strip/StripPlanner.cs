using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Labels;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Text;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Strip;

/// <summary>Works out a <see cref="StripLayout"/>.</summary>
internal sealed class StripPlanner(ClassBook book, StripOptions asked)
{
    private const double HeadHeight = 34;
    private const double TierGap = FlagPlacer.Gap;
    private const double GroundBand = 26;
    private const double PersonRoom = 44;
    private const double Margin = 12;

    private readonly WalkRoute _route = WalkRoute.Of(book, asked.WalkingSpeed);
    private readonly double _flagHeight = Math.Round(asked.LabelSize * 1.25);

    // Below 10 px a metre only silhouettes and people are left.
    private readonly StripOptions _options = asked.Scale < 10 ? asked with { Tape = false, Hazards = false, Labels = StripLabels.None } : asked;

    private double Pitch => _flagHeight + TierGap;

    public StripLayout Plan()
    {
        bool runsLeft = new WalkSides(book).RunsLeft;
        ImmutableArray<StripSide> sides = StripSides.Of(book, _options);
        StripItems items = new(book, _options, _route, sides);
        ImmutableArray<StripItem> all = Flagged(items, sides);
        double lowest = all.Where(i => i.Flag is { Up: false }).Select(i => i.Flag!.Box.High).DefaultIfEmpty(GroundBand).Max();
        double tape = lowest + PersonRoom;
        ImmutableArray<StripStop> stops = _options.Tape || _options.CurrentPlace is not null ? Stops(sides, tape) : [];
        Bounds? you = You(stops);
        Bounds sheet = Sheet(sides, all, stops, you, _options.Tape ? tape : lowest);
        return new StripLayout
        {
            Title = book.Title,
            RunsLeft = runsLeft,
            Sheet = sheet,
            Scale = _options.Scale,
            LabelSize = _options.LabelSize,
            Ground = 0,
            HeadLine = sheet.Low + 24,
            Tape = _options.Tape && stops.Length > 0 ? tape : null,
            Sides = sides,
            Stops = stops,
            You = you,
            Items = all,
            Zones = _options.Hazards ? StripZones.Of(book, _route, sides) : [],
            Paces = _options.Tape ? Paces(stops) : [],
        };
    }

    private ImmutableArray<StripItem> Flagged(StripItems items, ImmutableArray<StripSide> sides)
    {
        ImmutableArray<StripItem> named = [.. items.Items.Where(items.IsNamed)];
        ImmutableArray<(bool Up, FlagPlace Place)?> places = FlagBoard.Place([.. named.Select(i => Wish(i, sides))], _options.MostTiers);
        Dictionary<string, StripFlag> flags = [];
        foreach (bool up in new[] { true, false })
        {
            ImmutableArray<(StripItem Item, FlagPlace Place)> here =
                [.. named.Zip(places).Where(p => p.Second is { } s && s.Up == up).Select(p => (p.First, p.Second!.Value.Place))];
            bool bent = here.Any(p => Math.Abs(p.Item.X - p.Place.Pole) > 0.5);
            double edge = up ? -StripSides.Height(sides) - 6 : GroundBand;
            double first = edge + ((bent ? 16 : 8) * (up ? -1 : 1));
            foreach ((StripItem item, FlagPlace place) in here)
            {
                double near = first + (place.Tier * Pitch * (up ? -1 : 1));
                (double low, double high) = up ? (near - _flagHeight, near) : (near, near + _flagHeight);
                flags[item.Item.Name] = new StripFlag(StripItems.Label(item.Item), place, up, new Bounds(place.Left, low, place.Right, high), edge);
            }
        }

        return [.. items.Items.Select(i => i with { Flag = flags.GetValueOrDefault(i.Item.Name) })];
    }

    // High things are named above, low ones below; what is near the middle minds least to move.
    private FlagWish Wish(StripItem item, ImmutableArray<StripSide> sides)
    {
        double z = item.Item.Position!.Value.Z;
        int priority = item.IsSelected ? 2 : item.IsHere ? 1 : 0;
        return new FlagWish(Request(item, sides), z >= StripItems.UpFrom, 1 + (3 * Math.Abs(z - StripItems.UpFrom)), priority);
    }

    private FlagRequest Request(StripItem item, ImmutableArray<StripSide> sides)
    {
        StripSide side = sides.First(s => s.Side == item.Side);
        double room = StripSides.Gap * _options.Scale * 0.45;
        // Measured as if selected, so that choosing an item moves nothing.
        return new FlagRequest(item.X, TextMeasure.Width(StripItems.Label(item.Item), TextFace.Sans600, _options.LabelSize) + 10, side.Left - room, side.Right + room);
    }

    private ImmutableArray<StripStop> Stops(ImmutableArray<StripSide> sides, double tape)
    {
        ImmutableArray<WalkStop> shown = [.. _route.Stops.Where(s => sides.Any(d => d.Side == s.Side) && (s.Place.OnGround || _options.Scale >= 10))];
        ImmutableArray<WalkStop> ground = [.. shown.Where(s => s.Place.OnGround)];
        double X(WalkStop s) => sides.First(d => d.Side == s.Side).Map.X(s.Along);
        ImmutableArray<FlagPlace> places = FlagPlacer.Place(
            [.. ground.Select(s => new FlagRequest(X(s), TextMeasure.Width(StripItems.Capital(Say.Book(s.Place.Name)), TextFace.Sans500, _options.LabelSize) + 2))],
            centre: true);
        return [.. shown.Select(s =>
        {
            int at = ground.IndexOf(s);
            FlagPlace? flag = at >= 0 ? places[at] : null;
            double upper = tape + 11 + ((flag?.Tier ?? 0) * Pitch);
            Bounds? label = flag is null || !_options.Tape ? null : new Bounds(flag.Value.Left, upper, flag.Value.Right, upper + _flagHeight);
            double y = s.Place.OnGround ? tape : -Math.Max(s.Place.Position.Z, 0.3) * _options.Scale;
            return new StripStop(s, X(s), y, s.Place.Name == _options.CurrentPlace, _options.Visited.Contains(s.Place.Name), flag, label);
        })];
    }

    private ImmutableArray<StripPace> Paces(ImmutableArray<StripStop> stops)
    {
        StripStop[] ground = [.. stops.Where(s => s.Stop.Place.OnGround)];
        return [.. ground.Zip(ground.Skip(1))
            .Where(p => p.First.Stop.SecondsOnward is not null && Math.Abs(p.First.X - p.Second.X) > 4 * _options.LabelSize)
            .Select(p => new StripPace((p.First.X + p.Second.X) / 2, p.First.Stop.SecondsOnward!.Value))];
    }

    private Bounds Sheet(ImmutableArray<StripSide> sides, ImmutableArray<StripItem> items, ImmutableArray<StripStop> stops, Bounds? you, double lower)
    {
        double pad = StripSides.Pad * _options.Scale;
        Bounds sheet = new(sides[0].Left - pad, -StripSides.Height(sides) - Margin, sides[^1].Right + pad, lower + Margin);
        foreach (StripItem item in items.Where(i => i.Flag is not null))
        {
            sheet = sheet.Union(item.Flag!.Box.Grow(Margin));
        }

        foreach (StripStop stop in stops.Where(s => s.Label is not null))
        {
            sheet = sheet.Union(stop.Label!.Value.Grow(Margin));
        }

        if (you is { } words)
        {
            sheet = sheet.Union(words.Grow(Margin));
        }

        return sheet with { Low = sheet.Low - HeadHeight };
    }

    // Under the name of the current stop, below whatever other name is there.
    private Bounds? You(ImmutableArray<StripStop> stops)
    {
        StripStop? here = stops.FirstOrDefault(s => s.IsCurrent && s.Label is not null);
        if (here is null || _options.You.Length == 0 || !_options.Tape)
        {
            return null;
        }

        double half = (TextMeasure.Width(_options.You, TextFace.Sans600, _options.LabelSize) / 2) + 11;
        double upper = here.Label!.Value.High + 4;
        Bounds Pill() => new(here.X - half, upper, here.X + half, upper + _flagHeight + 4);
        foreach (Bounds label in stops.Where(s => s.Label is not null).Select(s => s.Label!.Value).OrderBy(l => l.Low))
        {
            upper = label.DistanceTo(Pill()) < 4 && label.High > here.Label.Value.High ? label.High + 4 : upper;
        }

        return Pill();
    }
}
