namespace Sightglass.Training.Lessons;

/// <summary>One change to a kept lesson. It names what it changes by the book's own words, so that it is seen when these words have become others.</summary>
public sealed class LessonEdit
{
    public required Guid Id { get; init; }

    /// <summary>The kept lesson.</summary>
    public required Guid Lesson { get; init; }

    public required LessonEditSort Sort { get; init; }

    /// <summary>In front of which item.</summary>
    public required string Item { get; init; }

    /// <summary>What the book said; empty for something added.</summary>
    public required string Was { get; set; }

    /// <summary>What is said instead; empty where it is left out.</summary>
    public required string Becomes { get; set; }

    public required string By { get; init; }

    public required DateTimeOffset At { get; init; }
}
