using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Sightglass.Basics.Language;

/// <summary>
/// Says what a person reads, in the language that is spoken (<see cref="Tongue.Spoken"/>). The English text is written where it is said and is the key of the
/// others; numbers are written alike in all languages, as gauges show them.
/// </summary>
public static class Say
{
    /// <summary>A text without gaps.</summary>
    /// <param name="text">In English.</param>
    public static string It([ConstantExpected] string text) => Tongue.Spoken.Of(text);

    /// <summary>
    /// A text with gaps: <c>Say.With($"Go to {place}.")</c> is the key <c>Go to {0}.</c>; another language may put the gaps in another order. What the class
    /// book says (a name) goes into a gap in the language that is spoken, and so does a sentence that is a gap of another.
    /// </summary>
    /// <param name="text">In English.</param>
    public static string With(FormattableString text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Tongue tongue = Tongue.Spoken;
        // Copied: what a sentence holds is its own, and it may be said in another language afterwards.
        object?[] gaps = [.. text.GetArguments()];
        for (int i = 0; i < gaps.Length; i++)
        {
            gaps[i] = gaps[i] switch { string said => tongue.OfBook(said), FormattableString inner => With(inner), var other => other };
        }

        return string.Format(CultureInfo.InvariantCulture, tongue.Of(text.Format), gaps);
    }

    /// <summary>A name or text of the class book.</summary>
    /// <param name="text">As the author wrote it.</param>
    [return: NotNullIfNotNull(nameof(text))]
    public static string? Book(string? text) => text is null ? null : Tongue.Spoken.OfBook(text);

    /// <summary>Names of the book in a row, each in the language that is spoken: <c>a, b</c>.</summary>
    public static string Names(IEnumerable<string> names, string between = ", ") => string.Join(between, names.Select(n => Book(n)));

    /// <summary>Names of the book in a sentence: <c>a, b and c</c>.</summary>
    public static string List(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length < 2 ? Names(all) : With($"{Names(all[..^1])} and {all[^1]}");
    }

    /// <summary>A text that depends on a count.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">In English, of one.</param>
    /// <param name="many">In English, of none or several.</param>
    public static string Of(long count, FormattableString one, FormattableString many) => With(count is 1 or -1 ? one : many);

    /// <summary>A word whose meaning depends on where it stands; its key is <c>where|word</c>.</summary>
    /// <param name="where">Tells it from the same word elsewhere, such as <c>button</c>.</param>
    /// <param name="word">In English.</param>
    public static string As([ConstantExpected] string where, [ConstantExpected] string word)
    {
        string key = where + '|' + word;
        string said = Tongue.Spoken.Of(key);
        return ReferenceEquals(said, key) ? Tongue.Spoken.Of(word) : said;
    }

    /// <summary>A word from a closed set that stands elsewhere as data (positions of a kind, its quantities, senses): its key is <c>word|…</c>.</summary>
    public static string Word(string word) => Tongue.Spoken.Word(word);

    /// <summary>A text with its first letter as a sentence begins.</summary>
    public static string Begin(string text) => string.IsNullOrEmpty(text) ? text : string.Concat(text[..1].ToUpperInvariant(), text[1..]);
}
