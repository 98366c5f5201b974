using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Messages;

/// <summary>Every finding about a class book: what is wrong, what would be right. The codes are listed in <see cref="BookCodes"/>.</summary>
internal static partial class BookMessages
{
    private const int Shown = 60;

    private static Diagnostic Error(string code, Span span, string message, string? fix = null) => new(code, Severity.Error, span, message, fix);

    private static Diagnostic Warning(string code, Span span, string message, string? fix = null) => new(code, Severity.Warning, span, message, fix);

    /// <summary>What the author wrote, in one line and not too long.</summary>
    private static string Quote(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.Length <= Shown ? $"`{line}`" : $"`{line[..Shown]}…`";
    }

    /// <summary><c>did you mean</c>, or the names there are when they are few.</summary>
    private static string? Suggest(string typed, IEnumerable<string> names, string whatThereIs)
    {
        string[] all = [.. names];
        return Nearest.DidYouMean(typed, all)
            ?? (all.Length is > 0 and <= 8 ? $"{whatThereIs}: {string.Join(", ", all.Select(n => $"`{n}`"))}" : null);
    }
}
