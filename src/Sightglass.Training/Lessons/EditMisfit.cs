using Sightglass.Basics.Language;
namespace Sightglass.Training.Lessons;

/// <summary>An edit of a kept lesson that fits no more, because the book or the lesson has become another. It is not applied, and nothing of it is lost.</summary>
/// <param name="Edit">As it was made.</param>
/// <param name="Now">What the book says there now, which it may be put on; null where there is nothing to put it on.</param>
public sealed record EditMisfit(LessonEdit Edit, string? Now)
{
    /// <summary>Why it fits no more, for people to read.</summary>
    public string Why => Now is not null ? Say.It("The book says it in other words now.")
        : Edit.Sort == LessonEditSort.Item ? Say.It("The lesson does not come by it any more, so there is nothing to pass by.")
        : Say.It("The book does not say this any more, or the lesson does not come by the item.");
}
