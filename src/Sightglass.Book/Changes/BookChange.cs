namespace Sightglass.Book.Changes;

/// <summary>One text of a book that becomes another one.</summary>
/// <param name="Target">Name of an item, or of a place.</param>
/// <param name="Property">A key that holds a single value: <c>label</c>, <c>for</c>, <c>normal</c>, <c>know</c>, <c>operate</c>, <c>repair</c>, <c>photo</c>, a parameter; of a place <c>text</c>.</param>
/// <param name="Becomes">What is to be read there; null takes the key out.</param>
public sealed record BookChange(string Target, string Property, string? Becomes)
{
    /// <summary>The machine on which it differs; null where it holds for the class.</summary>
    public string? RoadNumber { get; init; }

    /// <summary>The class of cars to which the target belongs; null for the machine.</summary>
    public string? Car { get; init; }

    /// <summary>Where it is given, the change is refused when the book says something else by now: what it was when the change was thought of, empty for nothing.</summary>
    public string? Was { get; init; }

    /// <summary>The text as a book holds it: no blanks round it, lines ended in one way.</summary>
    internal string? Text => Becomes?.ReplaceLineEndings("\n").Trim() is { Length: > 0 } text ? text : null;
}
