using Microsoft.EntityFrameworkCore;
using Sightglass.Basics.Language;
using Sightglass.Training.Lessons;

namespace Sightglass.Storage.Lessons;

/// <summary>The lessons that are kept for one book, with what was edited in them.</summary>
/// <param name="data">Where they are kept.</param>
/// <param name="clock">This computer's.</param>
public sealed class LessonDesk(DataFolder data, TimeProvider clock)
{
    /// <summary>No sentence that is said at a machine is longer.</summary>
    public const int LongestText = 4000;

    private const int LongestName = 100;

    /// <summary>By name.</summary>
    public IReadOnlyList<SavedLesson> All(string book)
    {
        using RecordsContext records = data.Records();
        return [.. records.Lessons.AsNoTracking().Where(l => l.Book == book).AsEnumerable().OrderBy(l => l.Name, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Id)];
    }

    /// <summary>One of them, or null.</summary>
    public SavedLesson? Find(Guid id)
    {
        using RecordsContext records = data.Records();
        return records.Lessons.AsNoTracking().SingleOrDefault(l => l.Id == id);
    }

    /// <summary>What was edited in it, in the order in which it was.</summary>
    public IReadOnlyList<LessonEdit> EditsOf(Guid lesson)
    {
        using RecordsContext records = data.Records();
        return [.. records.LessonEdits.AsNoTracking().Where(e => e.Lesson == lesson).AsEnumerable().OrderBy(e => e.At).ThenBy(e => e.Id)];
    }

    /// <summary>Keeps a lesson.</summary>
    /// <returns>Its id, or why not.</returns>
    public (Guid? Id, string? Why) Keep(string book, string name, string asks, string by)
    {
        string trimmed = name.Trim();
        if (trimmed.Length is 0 or > LongestName)
        {
            return (null, trimmed.Length == 0 ? Say.It("Give the lesson a name.") : Say.With($"A name has at most {LongestName} letters."));
        }

        DateTimeOffset now = clock.GetUtcNow();
        using RecordsContext records = data.Records();
        if (records.Lessons.Any(l => l.Book == book && l.Name == trimmed))
        {
            return (null, Say.With($"There is a lesson “{trimmed}” already."));
        }

        SavedLesson lesson = new() { Id = Guid.CreateVersion7(now), Book = book, Name = trimmed, Asks = asks, By = by, At = now };
        records.Lessons.Add(lesson);
        records.SaveChanges();
        return (lesson.Id, null);
    }

    /// <summary>A kept lesson asks for something else from now on: another depth, other people.</summary>
    public void Ask(Guid lesson, string asks)
    {
        using RecordsContext records = data.Records();
        SavedLesson kept = records.Lessons.Single(l => l.Id == lesson);
        kept.Asks = asks;
        records.SaveChanges();
    }

    /// <summary>Takes a lesson away, with what was edited in it.</summary>
    public void Drop(Guid lesson)
    {
        using RecordsContext records = data.Records();
        records.Lessons.Where(l => l.Id == lesson).ExecuteDelete();
    }

    /// <summary>Says something else than the book; saying again what the book says takes the edit away.</summary>
    /// <param name="lesson">Which.</param>
    /// <param name="sort">What is edited.</param>
    /// <param name="item">In front of which item.</param>
    /// <param name="was">What the book says; empty for something added.</param>
    /// <param name="becomes">What is said instead; empty where it is left out.</param>
    /// <param name="by">Who edits.</param>
    public void Edit(Guid lesson, LessonEditSort sort, string item, string was, string becomes, string by)
    {
        string said = becomes.Trim() is { Length: > LongestText } long_ ? long_[..LongestText] : becomes.Trim();
        using RecordsContext records = data.Records();
        if (was.Length > 0 || sort == LessonEditSort.Item)
        {
            records.LessonEdits.RemoveRange(records.LessonEdits.Where(e => e.Lesson == lesson && e.Sort == sort && e.Item == item && e.Was == was));
        }

        bool changes = sort == LessonEditSort.Item || (was.Length > 0 ? said != was : said.Length > 0);
        if (changes)
        {
            DateTimeOffset now = clock.GetUtcNow();
            records.LessonEdits.Add(new() { Id = Guid.CreateVersion7(now), Lesson = lesson, Sort = sort, Item = item, Was = was, Becomes = said, By = by, At = now });
        }

        records.SaveChanges();
    }

    /// <summary>Takes one edit away: the book is said again.</summary>
    public void Undo(Guid edit)
    {
        using RecordsContext records = data.Records();
        records.LessonEdits.Where(e => e.Id == edit).ExecuteDelete();
    }

    /// <summary>An edit that fitted no more is put on what the book says now.</summary>
    public void PutOn(Guid edit, string now)
    {
        using RecordsContext records = data.Records();
        LessonEdit kept = records.LessonEdits.Single(e => e.Id == edit);
        kept.Was = now;
        records.SaveChanges();
    }
}
