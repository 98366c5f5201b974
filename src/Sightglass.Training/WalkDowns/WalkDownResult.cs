using System.Collections.Immutable;

namespace Sightglass.Training.WalkDowns;

/// <summary>What a phone hands in: docs/schemas/walk-down.schema.json.</summary>
/// <param name="Notes">What was taken as it is and should be looked at: names that the book does not have.</param>
public sealed record WalkDownResult(string Book, string? RoadNumber, string Purpose, Guid Phone, string By, ImmutableArray<WalkDownFinding> Entries, ImmutableArray<string> Notes)
{
    /// <summary>What the file says it is.</summary>
    public const string Format = "sightglass walk-down 1";

    /// <summary>Bytes of a file; a hundred photos are a third of it.</summary>
    public const int MostBytes = 256 << 20;
}
