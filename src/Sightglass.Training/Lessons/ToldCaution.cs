using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Training.Lessons;

/// <summary>A caution as a stop tells it: whole where its station first meets it, then by its first sentence, which names the danger.</summary>
/// <param name="Caution">Of the book.</param>
/// <param name="AsAt">Number of the stop of the same station that told it whole; null where this one does.</param>
public sealed record ToldCaution(Caution Caution, int? AsAt)
{
    /// <summary>What <c>As at stop 2.</c> takes to say.</summary>
    private const int WordsOfAsAt = 4;

    /// <summary>What it says here, without the stop that told it whole; in the language that is spoken.</summary>
    public string Text => AsAt is null ? Say.Book(Caution.Text) : First(Say.Book(Caution.Text));

    /// <summary>How many are said. In English, so that a lesson takes as long in any language.</summary>
    public int Words => AsAt is null ? Count(Caution.Text) : Short(Caution);

    /// <summary>Whether telling it by its first sentence is shorter.</summary>
    internal static bool CanBeShort(Caution caution) => Short(caution) < Count(caution.Text);

    private static int Short(Caution caution) => Count(First(caution.Text)) + WordsOfAsAt;

    private static string First(string text) => Narration.Sentences(text).FirstOrDefault() ?? text;

    private static int Count(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;
}
