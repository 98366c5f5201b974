using Sightglass.Basics.Language;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>
/// A text of a calculator's sheet as a person reads it. The words of calculators are a set of their own, so that neither a class book nor a kind of equipment says them otherwise: the names in a
/// formula are those of its values in every language.
/// </summary>
/// <param name="Text">In English, as it stands in the sheet.</param>
public readonly record struct CalculatorWord(string Text)
{
    /// <summary>Before the text in the files of a language.</summary>
    public const string Key = "word|calc|";

    /// <summary>The text in the language that is spoken.</summary>
    public static string Of(string text)
    {
        Tongue spoken = Tongue.Spoken;
        return spoken.Words.GetValueOrDefault(Key + text) ?? (spoken.Code == Tongue.Marked.Code ? spoken.Of(text) : text);
    }

    public override string ToString() => Of(Text);
}
