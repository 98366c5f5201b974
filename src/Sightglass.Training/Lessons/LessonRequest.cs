using System.Collections.Immutable;
using Sightglass.Training.Defects;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Lessons;

/// <summary>A lesson round the machine: what is shown, to how many, how deep, in which time.</summary>
/// <param name="Route">What is shown and within which bounds.</param>
/// <param name="People">Who are taught; whoever speaks comes on top.</param>
/// <param name="Depth">How deep.</param>
public sealed record LessonRequest(RouteRequest Route, int People, Depth Depth)
{
    /// <summary>Minutes that there are; null where it does not matter.</summary>
    public double? Minutes { get; init; }

    /// <summary>At so many stations somebody speaks, and as many groups go round.</summary>
    public int Stations { get; init; } = 1;

    /// <summary>The role of those who are taught: what it may operate, hands may try. Null where nobody touches anything.</summary>
    public string? Audience { get; init; }

    /// <summary>What was edited in it, by the book's own words.</summary>
    public ImmutableArray<LessonEdit> Edits { get; init; } = [];

    /// <summary>What does not work on the machine on that day.</summary>
    public ImmutableArray<Defect> Defects { get; init; } = [];

    /// <summary>How long people take, and how fast whoever teaches speaks.</summary>
    public LessonTimes Times { get; init; } = new();

    /// <summary>What to bring, beside what protections need.</summary>
    public ImmutableArray<string> Kit { get; init; } = [];
}
