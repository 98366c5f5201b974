namespace Sightglass.Training.Defects;

/// <summary>Something that does not work on one machine, from the day it was found to the day it was mended.</summary>
public sealed class Defect
{
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    public required string RoadNumber { get; init; }

    /// <summary>Null where no item of the book is meant.</summary>
    public string? Item { get; init; }

    public required string Text { get; set; }

    /// <summary>What may not be done with it meanwhile; empty where nothing is held back.</summary>
    public string Restriction { get; set; } = "";

    public required string FoundBy { get; init; }

    public required DateOnly FoundOn { get; init; }

    public string? MendedBy { get; set; }

    public DateOnly? MendedOn { get; set; }

    /// <summary>Was it there on that day?</summary>
    public bool IsOpen(DateOnly day) => FoundOn <= day && (MendedOn is not { } mended || day < mended);
}
