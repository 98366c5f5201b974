namespace Sightglass.Training.Papers;

/// <summary>One text of a card as it was tried. Another text is another edition.</summary>
public sealed class PaperEdition
{
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    /// <summary>The card's title.</summary>
    public required string Card { get; init; }

    /// <summary>SHA-256 of the text, lower-case hexadecimal.</summary>
    public required string TextHash { get; init; }

    /// <summary>The very text.</summary>
    public required string Text { get; init; }

    /// <summary>Which state of the book it was tried with: hash of its plan.</summary>
    public required string BookEdition { get; init; }

    /// <summary>What the trials say, one line for a situation, separated by line feeds; empty where nothing was tried.</summary>
    public required string Tried { get; init; }

    /// <summary>Whether it was tried, and no case of it failed or stayed undecided.</summary>
    public required bool Passed { get; init; }

    public required string By { get; init; }

    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>As its last event says.</summary>
    public PaperState State { get; set; }
}
