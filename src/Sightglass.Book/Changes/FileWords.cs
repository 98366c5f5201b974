namespace Sightglass.Book.Changes;

/// <summary>A name of the book as the name of a file: <c>aft-supply-valve</c>.</summary>
internal static class FileWords
{
    private const int Longest = 60;

    /// <summary>At most 60 small letters, digits and hyphens; <c>item</c> where the name has none of them.</summary>
    public static string Of(string name)
    {
        string words = string.Join('-', new string([.. name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return words.Length > Longest ? words[..Longest].TrimEnd('-') : words.Length > 0 ? words : "item";
    }
}
