namespace Sightglass.Training.Papers;

/// <summary>Somebody moved an edition to a state. Never changed afterwards.</summary>
public sealed class PaperEvent
{
    public required Guid Id { get; init; }

    public required Guid Edition { get; init; }

    public required PaperState State { get; init; }

    public required string By { get; init; }

    public required DateTimeOffset At { get; init; }

    public string? Note { get; init; }
}
