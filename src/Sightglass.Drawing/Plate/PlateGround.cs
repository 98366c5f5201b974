using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Sightglass.Book.Model;
using Sightglass.Drawing.Strip;
using Sightglass.Drawing.Walk;

namespace Sightglass.Drawing.Plate;

/// <summary>What the plates of a machine have in common: the way round it and its sides as they are drawn, read once.</summary>
internal sealed class PlateGround
{
    /// <summary>Pixels a metre.</summary>
    public const double Scale = 66;

    private static readonly ConditionalWeakTable<ClassBook, PlateGround> s_known = [];

    private readonly ClassBook _book;
    private readonly ConcurrentDictionary<Side, (StripSide Side, double Height)> _sides = new();

    private PlateGround(ClassBook book) => (_book, Route) = (book, WalkRoute.Of(book));

    public WalkRoute Route { get; }

    public static PlateGround Of(ClassBook book) => s_known.GetValue(book, b => new(b));

    /// <summary>A side, and the highest point of its shapes above the rail, pixels.</summary>
    public (StripSide Side, double Height) this[Side side] => _sides.GetOrAdd(side, s =>
    {
        ImmutableArray<StripSide> drawn = StripSides.Of(_book, new StripOptions { Scale = Scale, Sides = [s] });
        return (drawn[0], StripSides.Height(drawn));
    });
}
