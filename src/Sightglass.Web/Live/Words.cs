using Sightglass.Basics.Language;

namespace Sightglass.Web.Live;

/// <summary>Small turns of phrase.</summary>
public static class Words
{
    /// <summary>A name or text of the book as a person reads it, begun as a sentence begins.</summary>
    public static string Capital(string text) => string.IsNullOrEmpty(text) ? "" : Say.Begin(Say.Book(text));

    /// <summary>A moment since the start: <c>1:02:07</c>.</summary>
    public static string Clock(double seconds)
    {
        long s = (long)Math.Floor(seconds + 1e-4);
        return FormattableString.Invariant($"{s / 3600}:{s / 60 % 60:00}:{s % 60:00}");
    }
}
