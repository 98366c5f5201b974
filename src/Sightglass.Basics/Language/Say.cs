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

    /// <summary>A text with gaps: <c>Say.With($"Go to {place}.")</c> is the key <c>Go to {0}.</c>; another language may put the gaps in another order.</summary>
    /// <param name="text">In English.</param>
    public static string With(FormattableString text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.Format(CultureInfo.InvariantCulture, Tongue.Spoken.Of(text.Format), text.GetArguments());
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
    public static string Word(string word)
    {
        Tongue tongue = Tongue.Spoken;
        if (ReferenceEquals(tongue, Tongue.English))
        {
            return word;
        }

        string key = "word|" + word;
        string said = tongue.Of(key);
        return ReferenceEquals(said, key) ? word : said;
    }

    /// <summary>A text with its first letter as a sentence begins.</summary>
    public static string Begin(string text) => string.IsNullOrEmpty(text) ? text : string.Concat(text[..1].ToUpperInvariant(), text[1..]);
}
