using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What is to be so at the end of a drill.</summary>
/// <param name="Name">As the sheet says it: <c>the leaking compartment is isolated</c>.</param>
/// <param name="Is">When it is so.</param>
/// <param name="Span">Where it stands.</param>
public sealed record DrillObjective(string Name, FormulaText Is, Span Span)
{
    /// <summary>Seconds from the moment at which the trainee could know, within which it must have come about; null: before the end.</summary>
    public double? Within { get; init; }

    /// <summary>Seconds for which it must stay so after the trainee has said that they are done.</summary>
    public double Stays { get; init; }

    /// <summary>Points.</summary>
    public double Worth { get; init; } = 1;

    /// <summary>Without it the drill is not passed.</summary>
    public bool IsCritical { get; init; } = true;

    /// <summary>It need only have been so at some moment, not at the end: a drain was opened.</summary>
    public bool Once { get; init; }

    /// <summary>Reports that do instead, where they are right: <c>it needs a lamp</c>.</summary>
    public ImmutableArray<string> OrReported { get; init; } = [];

    /// <summary>Why it matters, for the debrief.</summary>
    public string Because { get; init; } = "";
}
