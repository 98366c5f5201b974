using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Training.Lessons;

/// <summary>Applies the edits of a kept lesson to what the book says. An edit is found again by the book's own words; one whose words are gone is told, never guessed.</summary>
internal sealed class LessonEditing(ImmutableArray<LessonEdit> edits)
{
    private readonly HashSet<LessonEdit> _used = [];
    private readonly Dictionary<string, (string[] Says, string[] Questions)> _met = new(StringComparer.Ordinal);

    /// <summary>Whether an item is passed by.</summary>
    public bool PassesBy(Item item)
    {
        _met.TryAdd(item.Name, ([], []));
        return Of(item, LessonEditSort.Item).Select(Use).ToArray().Length > 0;
    }

    /// <summary>What is said in front of an item.</summary>
    public ImmutableArray<string> Says(Item item, IReadOnlyList<string> book)
    {
        _met[item.Name] = ([.. book], _met.GetValueOrDefault(item.Name).Questions ?? []);
        IEnumerable<string> added = Of(item, LessonEditSort.Says).Where(e => e.Was.Length == 0).Select(e => Use(e).Becomes);
        return [.. book.Select(text => Changed(item, LessonEditSort.Says, text)).Concat(added).Where(t => t.Length > 0)];
    }

    /// <summary>What is asked in front of an item.</summary>
    public IEnumerable<Question> Questions(Item item)
    {
        _met[item.Name] = (_met.GetValueOrDefault(item.Name).Says ?? [], [.. item.Questions.Select(q => q.Asked)]);
        return item.Questions.Select(q => q with { Asked = Changed(item, LessonEditSort.Question, q.Asked) }).Where(q => q.Asked.Length > 0);
    }

    /// <summary>The edits that were not used by all that came before, in their order.</summary>
    public ImmutableArray<EditMisfit> Misfits() => [.. edits.Where(e => !_used.Contains(e)).Select(e => new EditMisfit(e, Nearest(e)))];

    private IEnumerable<LessonEdit> Of(Item item, LessonEditSort sort) => edits.Where(e => e.Item == item.Name && e.Sort == sort);

    private string Changed(Item item, LessonEditSort sort, string text) => Of(item, sort).FirstOrDefault(e => e.Was.Length > 0 && e.Was == text) is { } edit ? Use(edit).Becomes : text;

    private LessonEdit Use(LessonEdit edit)
    {
        _used.Add(edit);
        return edit;
    }

    /// <summary>Of what the book says there now, that with the most words of what it said; null where it shares none that tells something, or is edited itself.</summary>
    private string? Nearest(LessonEdit edit)
    {
        string[] now = !_met.TryGetValue(edit.Item, out var met) ? [] : edit.Sort == LessonEditSort.Question ? met.Questions : met.Says;
        HashSet<string> was = WordsOf(edit.Was);
        return now.Where(text => !edits.Any(e => _used.Contains(e) && e.Item == edit.Item && e.Was == text))
            .Select(text => (Text: text, Shared: WordsOf(text).Intersect(was).Count()))
            .Where(t => t.Shared * 3 >= was.Count && t.Shared > 0)
            .OrderByDescending(t => t.Shared).Select(t => t.Text).FirstOrDefault();
    }

    private static HashSet<string> WordsOf(string text) =>
        [.. text.ToLowerInvariant().Split([' ', ',', '.', ';', ':', '?', '!', '“', '”', '(', ')'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 2)];
}
