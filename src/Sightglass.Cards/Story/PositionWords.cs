using Sightglass.Basics.Language;
using Sightglass.Cards.Sentences;

namespace Sightglass.Cards.Story;

/// <summary>Positions as a person reads them beside the thing that has them: in the language that is spoken, and agreeing with its name there.</summary>
public static class PositionWords
{
    /// <param name="item">As the book names it.</param>
    /// <param name="position">One of its positions, or a word of its scale; empty for none.</param>
    public static string Of(string item, string position) => position.Length == 0 ? "" : new ConditionWords(CardLanguages.Of(Tongue.Spoken)).Word(position, item);
}
