namespace Sightglass.Training.WalkDowns;

/// <summary>What somebody found of one item, or at one place, when they walked down a machine. A later revision of the same entry replaces the earlier one.</summary>
public sealed class WalkDownEntry
{
    /// <summary>Given by the phone, so that the same entry sent twice is one.</summary>
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    /// <summary>Null where only the class is known.</summary>
    public string? RoadNumber { get; init; }

    public required string Place { get; init; }

    /// <summary>Null for a finding at the place itself.</summary>
    public string? Item { get; init; }

    public required FoundState State { get; init; }

    /// <summary>As it is written on the machine.</summary>
    public string? Label { get; init; }

    /// <summary>Which way it is open.</summary>
    public string? OpensTowards { get; init; }

    public string? Note { get; init; }

    /// <summary>Name of a stored file.</summary>
    public string? Photo { get; init; }

    /// <summary>Name of a stored file.</summary>
    public string? Voice { get; init; }

    /// <summary>What was marked on the photo: a JSON list of <c>{"x", "y", "width", "height", "name"}</c>, in parts of the picture, 0…1.</summary>
    public string? Marks { get; init; }

    public required string By { get; init; }

    /// <summary>By the phone's clock, which may be wrong; told, and nothing is ordered by it.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The phone counts up.</summary>
    public required int Revision { get; init; }

    public required Guid Phone { get; init; }

    /// <summary>By this computer's clock.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }
}
