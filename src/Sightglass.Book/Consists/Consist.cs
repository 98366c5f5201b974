using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Book.Consists;

/// <summary>A train as somebody makes it up: vehicles from the head, how each of them stands, and where it goes.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Vehicles">From the head of the train.</param>
public sealed record Consist(string Title, ImmutableArray<ConsistVehicle> Vehicles)
{
    /// <summary>The usual share of its weight that the rail holds: sand, water and leaves change it.</summary>
    public const double UsualAdhesion = 0.2;

    /// <summary>The steepest grade of the way, rise over run, 0 or more.</summary>
    public double Grade { get; init; }

    /// <summary>The sharpest curve on it, degrees of 100 ft.</summary>
    public double Curve { get; init; }

    /// <summary>Share of the weight on driven axles that the rail holds.</summary>
    public double Adhesion { get; init; } = UsualAdhesion;

    /// <summary>The train as a book lists one.</summary>
    public Train AsTrain() => new(Title, default, "", [.. Vehicles.Select(v => v.Listed)]);

    /// <summary>A train of the book as it stands there, on the level.</summary>
    public static Consist Of(Train train)
    {
        ArgumentNullException.ThrowIfNull(train);
        return new(train.Name, [.. train.Vehicles.Select(v => new ConsistVehicle(v))]);
    }
}
