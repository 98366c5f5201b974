namespace Sightglass.Cards.Parsing;

/// <summary>What a line looks like before its words are read.</summary>
internal enum LineKind
{
    Blank,
    Comment,

    /// <summary>Begins with a label of the language's table.</summary>
    Labelled,
    Step,
    ListItem,
    Other,
}
