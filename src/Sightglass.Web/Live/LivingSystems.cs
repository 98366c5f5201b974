using Sightglass.Book.Model;

namespace Sightglass.Web.Live;

/// <summary>The systems of a book that are computed, in the author's order, and which of them a situation is about.</summary>
internal static class LivingSystems
{
    public static IEnumerable<string> Of(ClassBook book) => book.Systems.Values.Where(s => s.Alive).OrderBy(s => s.Span).Select(s => s.Name);

    /// <summary>The living system to which most of a situation's starting values and faults belong, the first where it says nothing; null where none lives.</summary>
    public static string? About(ClassBook book, Situation? situation)
    {
        string[] systems = [.. Of(book)];
        IEnumerable<string> named = situation is null ? [] : situation.Start.Select(s => s.Name).Concat(situation.States?.Of?.Columns.SelectMany(c => c.Sets) ?? []).Select(n => ItemOf(book, n)).Concat(situation.Faults.SelectMany(f => f.Items)).OfType<string>();
        Dictionary<string, int> count = named.Select(n => book.Items.GetValueOrDefault(n)?.System).OfType<string>().CountBy(s => s).ToDictionary(StringComparer.Ordinal);
        return systems.MaxBy(s => count.GetValueOrDefault(s));
    }

    // "fill of forward compartment", "idle of throttle" or the item itself.
    private static string? ItemOf(ClassBook book, string name)
    {
        if (book.Items.ContainsKey(name))
        {
            return name;
        }

        int of = name.IndexOf(" of ", StringComparison.Ordinal);
        return of >= 0 ? name[(of + 4)..] : null;
    }
}
