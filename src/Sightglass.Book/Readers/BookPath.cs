namespace Sightglass.Book.Readers;

/// <summary>Paths that a book names.</summary>
internal static class BookPath
{
    /// <summary>A path below the book's folder: relative, with forward slashes, never upwards.</summary>
    public static bool IsInside(string path) =>
        path.Length is > 0 and <= 260
        && !path.StartsWith('/')
        && path.AsSpan().IndexOfAny('\\', ':', '\0') < 0
        && !path.Split('/').Any(part => part is "" or "." or "..");
}
