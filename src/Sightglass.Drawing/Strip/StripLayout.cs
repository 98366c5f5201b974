using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Strip;

/// <summary>A strip as data: where everything stands, in pixels of the sheet, y downwards.</summary>
public sealed record StripLayout
{
    public required string Title { get; init; }

    /// <summary>Whether the walk runs right to left.</summary>
    public required bool RunsLeft { get; init; }

    /// <summary>The sheet: left, upper edge, right, lower edge.</summary>
    public required Bounds Sheet { get; init; }

    /// <summary>Pixels a metre.</summary>
    public required double Scale { get; init; }

    public required double LabelSize { get; init; }

    /// <summary>Top of the rail.</summary>
    public required double Ground { get; init; }

    /// <summary>Base line of the names of sides.</summary>
    public required double HeadLine { get; init; }

    /// <summary>The ground tape, or null where none is drawn.</summary>
    public double? Tape { get; init; }

    /// <summary>From left to right.</summary>
    public required ImmutableArray<StripSide> Sides { get; init; }

    /// <summary>In walking order.</summary>
    public required ImmutableArray<StripStop> Stops { get; init; }

    /// <summary>In walking order.</summary>
    public required ImmutableArray<StripItem> Items { get; init; }

    public required ImmutableArray<StripZone> Zones { get; init; }

    public required ImmutableArray<StripPace> Paces { get; init; }

    /// <summary>Box of the words under the person, or null.</summary>
    public Bounds? You { get; init; }

    /// <summary>What is within reach and has no name for want of room, in walking order.</summary>
    public IEnumerable<string> Unnamed => Items.Where(i => i.IsHere && i.Flag is null).Select(i => i.Item.Name);

    public StripStop? Here => Stops.FirstOrDefault(s => s.IsCurrent);

    /// <summary>The layout of a book.</summary>
    public static StripLayout Of(ClassBook book, StripOptions? options = null) => new StripPlanner(book, options ?? new()).Plan();
}
