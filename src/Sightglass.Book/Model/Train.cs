using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Vehicles coupled in order, from the head of the train. One of them is the machine that the book is about.</summary>
public sealed record Train(string Name, Span Span, string Text, ImmutableArray<TrainVehicle> Vehicles)
{
    /// <summary>What quantities of published rules are in this train, beside those of the machine; these go before.</summary>
    public ImmutableArray<Measure> Measures { get; init; } = [];

    /// <summary>The situation in which it stands charged and ready to run; null where the author names none.</summary>
    public string? InService { get; init; }
}
