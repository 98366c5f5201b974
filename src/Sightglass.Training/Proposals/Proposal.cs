namespace Sightglass.Training.Proposals;

/// <summary>A change to the book that somebody proposes; nothing is changed until somebody accepts it.</summary>
public sealed class Proposal
{
    public required Guid Id { get; init; }

    /// <summary>The book's title.</summary>
    public required string Book { get; init; }

    /// <summary>By which people name it: from 1 within its book, given once.</summary>
    public required int Number { get; init; }

    public required ProposalOrigin Origin { get; init; }

    /// <summary>The entry or question that it came from.</summary>
    public Guid? OriginId { get; init; }

    /// <summary>Item or place.</summary>
    public required string Target { get; init; }

    /// <summary>For one road number only; null for all.</summary>
    public string? RoadNumber { get; init; }

    /// <summary>Key in the book, such as <c>label</c>.</summary>
    public required string Property { get; init; }

    /// <summary>What the book said when this was proposed; null where it said nothing.</summary>
    public string? Was { get; init; }

    /// <summary>What it is to say.</summary>
    public required string Becomes { get; init; }

    /// <summary>What was accepted instead; null where it was accepted as proposed, or is open.</summary>
    public string? Edited { get; set; }

    /// <summary>Name of a stored file that goes into the book's folder with it.</summary>
    public string? File { get; init; }

    /// <summary>In the words of whoever proposes it.</summary>
    public required string Why { get; init; }

    public required string By { get; init; }

    public required DateTimeOffset At { get; init; }

    public ProposalState State { get; set; }

    public string? DecidedBy { get; set; }

    public DateTimeOffset? DecidedAt { get; set; }

    public string? DecidedWhy { get; set; }
}
