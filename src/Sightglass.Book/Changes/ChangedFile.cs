namespace Sightglass.Book.Changes;

/// <summary>A file of a book before and after a change.</summary>
/// <param name="Path">Relative to the book's folder, with forward slashes.</param>
public sealed record ChangedFile(string Path, string Before, string After)
{
    /// <summary>What differs, as a unified diff.</summary>
    public string Diff => UnifiedDiff.Of(Path, Before, After);
}
