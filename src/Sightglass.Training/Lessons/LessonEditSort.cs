namespace Sightglass.Training.Lessons;

public enum LessonEditSort
{
    /// <summary>A sentence that is said.</summary>
    Says,

    /// <summary>A question that is asked; the answer stays the book's.</summary>
    Question,

    /// <summary>The whole item is passed by.</summary>
    Item,
}
