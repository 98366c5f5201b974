using System.Collections.Immutable;
using Sightglass.Basics.Language;

namespace Sightglass.Paper.Papers;

/// <summary>What stands at the foot of a pocket card about its text.</summary>
/// <param name="Tried">A sentence a situation: in how many cases it was tried, and what they came to.</param>
/// <param name="Book">Title, edition and hash of the book whose machine it was tried on, seed and program.</param>
/// <param name="Printed">The day.</param>
/// <param name="ApprovedBy">Who stands for it; null for a draft.</param>
public sealed record CardStamp(IReadOnlyList<string> Tried, string Book, DateOnly Printed, string? ApprovedBy)
{
    /// <summary>The card's way to its state, one event a line with name and date; where there is none, the stamp says only who approved it.</summary>
    public ImmutableArray<string> History { get; init; } = [];

    /// <summary>What must not be overlooked where the card is not to be worked by: withdrawn, superseded, draft; null where it is approved.</summary>
    public string? NotToBeWorkedBy => Warning ?? (ApprovedBy is null ? Say.With($"DRAFT of {PaperWords.Day(Printed)}, approved by nobody. Not to be worked by.") : null);

    /// <summary>The warning of its state, where a state is known.</summary>
    public string? Warning { get; init; }
}
