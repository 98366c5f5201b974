using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Trains;

/// <summary>A train vehicle after vehicle with what goes through it, head at the left.</summary>
public sealed record TrainMap
{
    /// <summary>What it shows, for people who cannot see it.</summary>
    public required string Title { get; init; }

    /// <summary>The train as one book, for its silhouettes.</summary>
    public required ClassBook Book { get; init; }

    /// <summary>From the head of the train.</summary>
    public required ImmutableArray<TrainMapVehicle> Vehicles { get; init; }

    /// <summary>Values below the vehicles.</summary>
    public ImmutableArray<TrainMapRow> Rows { get; init; } = [];

    /// <summary>Lines below them.</summary>
    public ImmutableArray<TrainMapLine> Lines { get; init; } = [];

    /// <summary>Pixels. Default 1000.</summary>
    public double Width { get; init; } = 1000;
}
