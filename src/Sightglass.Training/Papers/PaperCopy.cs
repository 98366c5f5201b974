namespace Sightglass.Training.Papers;

/// <summary>A printed copy in somebody's hands, so that it can be called back.</summary>
public sealed class PaperCopy
{
    public required Guid Id { get; init; }

    public required Guid Edition { get; init; }

    /// <summary>Counted from 1 within its edition.</summary>
    public required int Number { get; init; }

    public required string Holder { get; init; }

    public required DateTimeOffset GivenAt { get; init; }

    /// <summary>When it came back or was seen destroyed; null while it is out.</summary>
    public DateTimeOffset? BackAt { get; set; }

    public string? BackNote { get; set; }
}
