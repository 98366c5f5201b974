namespace Sightglass.Book.Language;

/// <summary>What a text of a book is to those who translate it.</summary>
public enum BookTextSort
{
    /// <summary>A name that cards and formulas can say.</summary>
    Name,

    /// <summary>A word for a position or a stretch of a scale.</summary>
    Word,

    /// <summary>Words for people alone.</summary>
    Prose,
}
