using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Something that the leading cab commands in every unit, and the fact by which it is seen whether a unit answers.</summary>
/// <param name="Name">What is commanded, for people.</param>
/// <param name="Span">Where it is described.</param>
public sealed record TrainCommand(string Name, Span Span)
{
    /// <summary>What is done in the leading cab.</summary>
    public required Setting Set { get; init; }

    /// <summary>The fact of the machine that comes true in a unit that answers.</summary>
    public required string Answers { get; init; }

    /// <summary>The same for a unit that faces the other way than the leading one; null where it is the same.</summary>
    public string? AnswersTurned { get; init; }

    /// <summary>Whether a unit that does not answer it does not pull.</summary>
    public bool Pulls { get; init; }
}
