using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Book.Consists;

/// <summary>One vehicle of a train that is made up.</summary>
/// <param name="Listed">Its class and which way it stands.</param>
public sealed record ConsistVehicle(TrainVehicle Listed)
{
    /// <summary>The number on its side; empty where it is not said.</summary>
    public string Number { get; init; } = "";

    /// <summary>kg as it is now; null for that of its class.</summary>
    public double? Mass { get; init; }

    /// <summary>Whether a machine is hauled dead.</summary>
    public bool IsDead { get; init; }

    /// <summary>Its controls that do not stand as the book sets a train up.</summary>
    public ImmutableArray<Setting> Stands { get; init; } = [];

    /// <summary>Lines that are not coupled to the vehicle behind it, each with the place where that is said.</summary>
    public ImmutableArray<(string Line, Span Span)> NotCoupled { get; init; } = [];
}
