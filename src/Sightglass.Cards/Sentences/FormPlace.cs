namespace Sightglass.Cards.Sentences;

/// <summary>Where in a card a sentence may stand.</summary>
public enum FormPlace
{
    Head,
    Notice,
    Step,

    /// <summary>After another sentence, which it completes.</summary>
    Tail,

    /// <summary>Inside a sentence: what can be found true by looking.</summary>
    Condition,

    /// <summary>Inside a sentence: what is true in fact.</summary>
    Fact,
}
