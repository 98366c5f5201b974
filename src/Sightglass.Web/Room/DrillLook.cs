using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.World.Journal;

namespace Sightglass.Web.Room;

/// <summary>Everything that pages show of a drill at one moment. Immutable. A trainee's page takes of it what its own <see cref="Sight"/> holds, and what is said.</summary>
public sealed record DrillLook
{
    public SimTime Now { get; init; }

    /// <summary>What each of the people there sees from where they stand, by their number.</summary>
    public ImmutableArray<Sight> Sights { get; init; } = [];

    /// <summary>Everybody there, by their number: for the instructor.</summary>
    public ImmutableArray<PersonLook> People { get; init; } = [];

    /// <summary>What is said by radio: everybody hears it. Oldest first.</summary>
    public ImmutableArray<JournalEntry> Said { get; init; } = [];

    /// <summary>What came about, hidden truth included: for the instructor.</summary>
    public ImmutableArray<JournalEntry> Journal { get; init; } = [];

    /// <summary>What the evaluation is made from, oldest first.</summary>
    public ImmutableArray<DrillNote> Notes { get; init; } = [];

    /// <summary>The evaluation as it falls.</summary>
    public EvaluationSheet? Sheet { get; init; }

    /// <summary>The trainee has said that they are done, or the time is over.</summary>
    public bool IsOver { get; init; }

    /// <summary>Over, and what must stay so has had its time.</summary>
    public bool IsJudged { get; init; }

    /// <summary>Whether the instructor acts in the trainee's stead.</summary>
    public bool IsTakenOver { get; init; }

    /// <summary>Why the numbers could not go on, or null.</summary>
    public string? Trouble { get; init; }
}
