using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Where a world starts: each value fixed or a range.</summary>
public sealed record Situation
{
    public required string Name { get; init; }

    public required Span Span { get; init; }

    public string Text { get; init; } = "";

    /// <summary>The road numbers of which a case draws one; all of the book's where none is named.</summary>
    public ImmutableArray<string> RoadNumbers { get; init; } = [];

    /// <summary>The train in which the machine runs; null where it stands alone.</summary>
    public string? Train { get; init; }

    /// <summary>The cards that are for it, by the names of their files without the ending: it is where they are tried.</summary>
    public ImmutableArray<string> Cards { get; init; } = [];

    /// <summary>Who is there: role → place (fixed or one of several).</summary>
    public ImmutableArray<PersonStart> People { get; init; } = [];

    /// <summary>How those answer who are asked.</summary>
    public AnswerStart Answers { get; init; } = AnswerStart.Ordinary;

    /// <summary>Starting values: item or quantity name → value.</summary>
    public ImmutableArray<StartValue> Start { get; init; } = [];

    /// <summary>States of which a case has one, beside the starting values; null where there are none.</summary>
    public StatesDraw? States { get; init; }

    public ImmutableArray<FaultStart> Faults { get; init; } = [];
}
