using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>
/// A situation for a person to work in, and what is asked of them. How they get there is theirs: what is judged is what came of it, never which card was followed.
/// </summary>
public sealed record Drill(string Name, Span Span)
{
    /// <summary>What is to be learned or shown, in one sentence: read out before it begins.</summary>
    public required string Aim { get; init; }

    public DrillLevel Level { get; init; }

    /// <summary>Whether it counts: a qualifying drill is not passed with a hint.</summary>
    public bool IsQualifying { get; init; }

    /// <summary>Where it starts; its ranges are the drill's variants.</summary>
    public required string Situation { get; init; }

    /// <summary>Where the situation is named.</summary>
    public required Span SituationSpan { get; init; }

    /// <summary>Whom the trainee plays: one of those who are there in the situation.</summary>
    public required string Role { get; init; }

    public required Span RoleSpan { get; init; }

    /// <summary>Seconds from the start after which it is over.</summary>
    public double TimeLimit { get; init; } = 3600;

    /// <summary>What anybody says who wants everything to stop at once.</summary>
    public string StopWord { get; init; } = "";

    /// <summary>What differs from a real machine, told before it begins.</summary>
    public ImmutableArray<string> NotReal { get; init; } = [];

    /// <summary>What the trainee has in hand.</summary>
    public ImmutableArray<string> Tools { get; init; } = [];

    /// <summary>Whether the trainee may have cards in hand.</summary>
    public bool WithCards { get; init; } = true;

    /// <summary>What has happened when the trainee has something to do; null: the start.</summary>
    public FormulaText? Cue { get; init; }

    /// <summary>Signs and instruments that tell the cue to whoever is where they can be seen, heard, smelled or read; empty: it is known at once.</summary>
    public ImmutableArray<string> KnownFrom { get; init; } = [];

    public Span KnownFromSpan { get; init; }

    /// <summary>What happens on the way.</summary>
    public ImmutableArray<DrillEvent> Events { get; init; } = [];

    /// <summary>What is to be so at the end.</summary>
    public ImmutableArray<DrillObjective> Objectives { get; init; } = [];

    /// <summary>What may be reported; where there is something, the right one is to be.</summary>
    public ImmutableArray<DrillReport> Reports { get; init; } = [];

    /// <summary>What must not come about at any moment.</summary>
    public ImmutableArray<DrillNever> MustNever { get; init; } = [];

    /// <summary>What must have been so before something else comes about: those orders alone that safety needs.</summary>
    public ImmutableArray<DrillOrder> Orders { get; init; } = [];

    /// <summary>Share of the points from which it is passed, beside every critical line.</summary>
    public double PassesFrom { get; init; } = 0.8;

    /// <summary>From the faintest to the plainest.</summary>
    public ImmutableArray<DrillHint> Hints { get; init; } = [];

    /// <summary>What an assessor watches beside what the machine tells: go, no go or not seen.</summary>
    public ImmutableArray<string> Observe { get; init; } = [];

    /// <summary>Questions for afterwards.</summary>
    public ImmutableArray<Question> Asks { get; init; } = [];

    /// <summary>Cards that pass it, by the names of their files without the ending.</summary>
    public ImmutableArray<string> SolvedBy { get; init; } = [];

    public Span SolvedBySpan { get; init; }
}
