namespace Sightglass.World.Journal;

/// <summary>
/// The sentences of a journal in one language, as data: what a card did is told in the words of the card's own table, these are all others. A gap in braces takes
/// a name of the book; a sentence may begin with one.
/// </summary>
public sealed record JournalWords
{
    /// <summary>Somebody is injured: {role}, {hazard}, {caution}.</summary>
    public required string Bitten { get; init; }

    /// <summary>Somebody stands where something is to be heeded: {role}, {hazard}, {caution}.</summary>
    public required string ToHeed { get; init; }

    /// <summary>A fault has come: {fault}, {item}.</summary>
    public required string FaultCame { get; init; }

    /// <summary>A fault was taken out: {fault}, {item}.</summary>
    public required string FaultGone { get; init; }

    /// <summary>Who operates where it is none of the people who are there.</summary>
    public required string Instructor { get; init; }

    /// <summary>A control was put somewhere: {who}, {item}, {position}.</summary>
    public required string Put { get; init; }

    /// <summary>A control would not go there: {who}, {item}, {position}.</summary>
    public required string PutInVain { get; init; }

    /// <summary>Somebody sets out: {who}, {place}.</summary>
    public required string Goes { get; init; }

    /// <summary>A control that a card turns does not move: {item}, {position}.</summary>
    public required string DoesNotMove { get; init; }

    /// <summary>Another control holds it.</summary>
    public required string IsHeld { get; init; }

    /// <summary>The card is done.</summary>
    public required string EndedWell { get; init; }

    /// <summary>The card stopped safely: {why}.</summary>
    public required string EndedSafely { get; init; }

    /// <summary>The card is not for this.</summary>
    public required string NotToBeUsed { get; init; }

    /// <summary>The numbers could not decide it: {why}.</summary>
    public required string Undecided { get; init; }

    /// <summary>The card failed: {why}.</summary>
    public required string Failed { get; init; }
}
