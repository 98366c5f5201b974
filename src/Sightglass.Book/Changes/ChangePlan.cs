namespace Sightglass.Book.Changes;

/// <summary>What becomes of a change: the file with it, or why there is none.</summary>
/// <param name="File">Null where it is refused.</param>
/// <param name="Refused">What is in the way and what would be right; null where nothing is.</param>
public sealed record ChangePlan(ChangedFile? File, string? Refused)
{
    internal static ChangePlan No(string why) => new(null, why);
}
