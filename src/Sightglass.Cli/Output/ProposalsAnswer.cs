namespace Sightglass.Cli.Output;

/// <summary>What <c>proposals --json</c> answers.</summary>
internal sealed record ProposalsAnswer(string Book, IReadOnlyList<ProposalsAnswer.Row> Proposals)
{
    /// <param name="Number">By which it is shown, accepted and refused.</param>
    /// <param name="Edited">What was accepted instead; null where it was accepted as proposed, or is not.</param>
    /// <param name="State">open, accepted, refused.</param>
    /// <param name="Diff">Of the one that is shown.</param>
    /// <param name="Refused">Why it cannot be made as it stands.</param>
    internal sealed record Row(int Number, string Target, string? RoadNumber, string Property, string? Was, string Becomes, string? Edited, string Why, string By, DateTimeOffset At, string State, string? DecidedBy, string? DecidedWhy, string? Diff, string? Refused);
}
