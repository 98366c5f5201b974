namespace Sightglass.Training.Questions;

/// <summary>A question that somebody asked at a lesson and nobody could answer there: who finds out, by when, and what they found.</summary>
public sealed class OpenQuestion
{
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    public required string Text { get; set; }

    /// <summary>What it is about; null for the machine as a whole.</summary>
    public string? Item { get; set; }

    /// <summary>Empty where nobody wrote it down.</summary>
    public required string AskedBy { get; init; }

    public required DateTimeOffset AskedAt { get; init; }

    /// <summary>Who finds out.</summary>
    public required string Owner { get; set; }

    public required DateOnly Due { get; set; }

    public string? Answer { get; set; }

    public string? AnsweredBy { get; set; }

    public DateTimeOffset? AnsweredAt { get; set; }

    /// <summary>The change to the book that came of it.</summary>
    public Guid? Proposal { get; set; }

    /// <summary>Is it unanswered after its day?</summary>
    public bool IsLate(DateOnly today) => Answer is null && today > Due;
}
