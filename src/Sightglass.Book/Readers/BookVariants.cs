using System.Collections.Immutable;

namespace Sightglass.Book.Readers;

/// <summary>What is checked beside the class itself.</summary>
/// <param name="Numbers">Road numbers that have modifications.</param>
/// <param name="Cars">Classes of cars.</param>
/// <param name="Trains">Trains, coupled.</param>
internal sealed record BookVariants(ImmutableArray<RoadNumberItems> Numbers, ImmutableArray<CarItems> Cars, ImmutableArray<TrainItems> Trains)
{
    public static BookVariants None { get; } = new([], [], []);
}
