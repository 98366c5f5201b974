namespace Sightglass.Paper;

/// <summary>What stands at the foot of a pocket card about its text.</summary>
/// <param name="Tried">A sentence a situation: in how many cases it was tried, and what they came to.</param>
/// <param name="Book">Title, edition and hash of the book whose machine it was tried on, seed and program.</param>
/// <param name="Printed">The day.</param>
/// <param name="ApprovedBy">Who stands for it; null for a draft.</param>
public sealed record PocketStamp(IReadOnlyList<string> Tried, string Book, DateOnly Printed, string? ApprovedBy);
