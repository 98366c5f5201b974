namespace Sightglass.Training.Lessons;

/// <summary>A lesson that somebody keeps: what it asks of the planner, and a name. What was edited in it stands beside it.</summary>
public sealed class SavedLesson
{
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    public required string Name { get; set; }

    /// <summary>The page's address after the question mark: what is shown, to whom, in how many stations.</summary>
    public required string Asks { get; set; }

    public required string By { get; init; }

    public required DateTimeOffset At { get; init; }
}
