using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>Pressure along a train at moments: plain series, to be drawn as one picture.</summary>
public sealed record TrainPressure
{
    public required string Title { get; init; }

    /// <summary>Whether the title is drawn, or only told to who cannot see the picture. Default true.</summary>
    public bool ShowsTitle { get; init; } = true;

    /// <summary>Whether moments are told as how long ago they were, the last one being now. Default false: as the time at which they were.</summary>
    public bool UntilNow { get; init; }

    /// <summary>Below the title.</summary>
    public string Lead { get; init; } = "";

    /// <summary>Of the pressures, as shown.</summary>
    public string Unit { get; init; } = "psi";

    /// <summary>Where the pressure is known, metres from the head of the train, rising.</summary>
    public required ImmutableArray<double> Positions { get; init; }

    /// <summary>Seconds, rising, each with one pressure for each position; what is not a number is left out of a curve.</summary>
    public required ImmutableArray<(double Time, ImmutableArray<double> Pressures)> Moments { get; init; }

    /// <summary>What the train is made of, metres from its head; drawn below, each with its name where there is room.</summary>
    public ImmutableArray<TrainVehicle> Vehicles { get; init; } = [];

    /// <summary>Curves drawn at most. Default 8.</summary>
    public int Curves { get; init; } = 8;

    /// <summary>Pixels. Default 1000.</summary>
    public double Width { get; init; } = 1000;

    /// <summary>Height of the field of curves, pixels. Default 340.</summary>
    public double Height { get; init; } = 340;
}
