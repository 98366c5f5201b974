namespace Sightglass.Training.Proposals;

/// <summary>A change to one key that a finding asks for.</summary>
/// <param name="Property">Key in the book.</param>
/// <param name="RoadNumber">Null for the class.</param>
/// <param name="Why">In a sentence.</param>
/// <param name="Becomes">Made of what the book says now; null where it says so already.</param>
public sealed record ProposalDraft(string Property, string? RoadNumber, string Why, Func<string, string?> Becomes);
