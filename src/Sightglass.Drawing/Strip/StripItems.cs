using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Strip;

/// <summary>Which items stand on the strip, on which side, and what they are called there.</summary>
internal sealed class StripItems
{
    /// <summary>Items from this height have their flag above the machine, metres.</summary>
    public const double UpFrom = 1.35;

    private readonly StripOptions _options;
    private readonly int? _vehicle;

    // Where the person stands on the sheet, pixels.
    private readonly double? _lit;

    public StripItems(ClassBook book, StripOptions options, WalkRoute route, ImmutableArray<StripSide> sides)
    {
        _options = options;
        _vehicle = options.CurrentPlace is { } here && book.Places.TryGetValue(here, out Place? place) ? place.Vehicle.Index : null;
        _lit = route.Find(options.CurrentPlace) is { } at && sides.FirstOrDefault(s => s.Side == at.Side) is { } side ? side.Map.X(at.Along) : null;
        Items = options.Labels == StripLabels.None || options.Scale < 10
            ? []
            : [.. route.Stops.SelectMany(s => s.Items.Select(i => Mark(book, options, s, book.Items[i], sides))).OfType<StripItem>()];
    }

    public ImmutableArray<StripItem> Items { get; }

    public static string Label(Item item) => Capital(Say.Book(item.Label.Length > 0 ? item.Label : item.Name));

    /// <summary>
    /// Of a train only what is on the vehicle where the person stands: a hundred metres of names would tell nothing. In the light of the lamp only what is within reach:
    /// the room there is for that.
    /// </summary>
    public bool IsNamed(StripItem item) =>
        item.IsSelected || item.IsHere
        || (_options.Labels == StripLabels.All && _options.Scale >= 30 && (_vehicle is null || item.Item.Vehicle.Index == _vehicle) && !(_lit is { } lit && Math.Abs(item.X - lit) < StripGround.LampReach * _options.Scale));

    public static string Capital(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    private static StripItem? Mark(ClassBook book, StripOptions options, WalkStop stop, Item item, ImmutableArray<StripSide> sides)
    {
        bool selected = item.Name == options.SelectedItem;
        bool here = options.CurrentPlace is not null && item.Places.Contains(options.CurrentPlace);
        if (item.Position is not { } position || (!stop.Place.OnGround && !here && !selected))
        {
            return null;
        }

        Side side = stop.Place.OnGround ? stop.Side : new WalkSides(book).OfInside(position, stop.Side);
        StripSide? drawn = sides.FirstOrDefault(s => s.Side == side);
        if (drawn is null)
        {
            return null;
        }

        double along = WalkSides.Along(side, position);
        return new StripItem(item, side, Medium(book, item), drawn.Map.X(along), drawn.Map.Y(position.Z), selected, here, null);
    }

    private static string Medium(ClassBook book, Item item) =>
        item.System is not null && book.Systems.TryGetValue(item.System, out SystemSheet? system) ? system.Medium : item.Kind.Medium ?? "";
}
