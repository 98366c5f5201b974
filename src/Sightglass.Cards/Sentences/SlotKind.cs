namespace Sightglass.Cards.Sentences;

/// <summary>What may stand in a gap of a pattern.</summary>
public enum SlotKind
{
    /// <summary>Any words up to the end of the step.</summary>
    Text,

    /// <summary>Any words, separated by commas or the word for 'and'.</summary>
    Texts,

    /// <summary>Any words that stop where the pattern goes on.</summary>
    Words,

    /// <summary>One word that names a letter or a number written down.</summary>
    Name,

    /// <summary>What several things of the book are each one of: car, compartment.</summary>
    Noun,

    Item,
    Place,
    Position,
    Sign,
    Fact,
    Role,

    /// <summary>One role or several.</summary>
    Roles,
    Protection,

    /// <summary>A quantity of time.</summary>
    Time,

    /// <summary>A quantity of any dimension.</summary>
    Value,

    /// <summary>A word for a stretch of an instrument's scale.</summary>
    ScaleWord,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>The number of a step.</summary>
    Step,

    /// <summary>A calculation with numbers written down.</summary>
    Calculation,

    /// <summary>What can be found true by looking.</summary>
    Condition,

    /// <summary>Facts of the book.</summary>
    Facts,

    /// <summary>Another sentence.</summary>
    Action,

    /// <summary>Sentences, one after the other.</summary>
    Actions,
}
