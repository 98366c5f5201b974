using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>
/// What is to be written so that an entry says what it is to say: one edit after the other, each where it differs. Elements of a list are known by the value of their first key, such as a column by its head.
/// </summary>
/// <param name="file">As it is after the edits before.</param>
internal sealed class EntryEdit(FileText file)
{
    /// <summary>The next edit of a map; null where nothing of it differs any more.</summary>
    /// <param name="now">As it stands in the file.</param>
    /// <param name="was">As it was before the change.</param>
    /// <param name="becomes">With the change.</param>
    public TextEdit? Next(YamlMap now, YamlMap was, YamlMap becomes) =>
        becomes.Entries.Where(b => was.Find(b.Name) is not { } w || !Same(w.Value, b.Value)).Select(b => Set(now, was.Find(b.Name)?.Value, b)).FirstOrDefault(e => e is not null)
        ?? was.Entries.Where(w => becomes.Find(w.Name) is null).Select(w => now.Find(w.Name)).Where(n => n is not null).Select(n => file.Remove(now, n!)).FirstOrDefault();

    private TextEdit? Set(YamlMap now, YamlNode? was, YamlEntry becomes) => (now.Find(becomes.Name), becomes.Value) switch
    {
        (null, var value) => file.Insert(now, becomes.Name, value),
        ({ } there, var value) when Same(there.Value, value) => null,
        ({ Value: YamlMap { Entries.Length: > 0 } map }, YamlMap value) => Next(map, was as YamlMap ?? map, value),
        ({ Value: YamlList { Items.Length: > 0 } list }, YamlList value) when list.Items.Concat(value.Items).All(i => IdOf(i) is not null) => Next(list, was as YamlList ?? list, value),
        ({ Value: YamlScalar } there, YamlList { Items: [YamlScalar only] }) => file.Replace(there, only),
        ({ } there, var value) => file.Replace(there, value),
    };

    private TextEdit? Next(YamlList now, YamlList was, YamlList becomes)
    {
        foreach (YamlMap item in becomes.Items.OfType<YamlMap>())
        {
            YamlMap? before = Find(was, IdOf(item));
            if (before is not null && Same(before, item))
            {
                continue;
            }

            if (Find(now, IdOf(item)) is not { } there)
            {
                return file.Append(now, item);
            }

            if (Next(there, before ?? there, item) is { } edit)
            {
                return edit;
            }
        }

        return was.Items.Where(w => Find(becomes, IdOf(w)) is null).Select(w => Find(now, IdOf(w))).Where(n => n is not null).Select(n => file.Remove(now, n!)).FirstOrDefault();
    }

    private static string? IdOf(YamlNode item) => item is YamlMap { Entries: [{ Value: YamlScalar id }, ..] } ? id.Value : null;

    private static YamlMap? Find(YamlList list, string? id) => list.Items.FirstOrDefault(i => IdOf(i) == id) as YamlMap;

    /// <summary>Whether two nodes say the same: a list of one is what it holds, and the order of keys says nothing.</summary>
    private static bool Same(YamlNode a, YamlNode b) => (a, b) switch
    {
        (YamlScalar s, YamlScalar t) => s.Value.Trim() == t.Value.Trim(),
        (YamlList { Items: [YamlScalar s] }, YamlScalar t) => Same(s, t),
        (YamlScalar s, YamlList { Items: [YamlScalar t] }) => Same(s, t),
        (YamlList s, YamlList t) => s.Items.Length == t.Items.Length && s.Items.Zip(t.Items).All(i => Same(i.First, i.Second)),
        (YamlMap s, YamlMap t) => s.Entries.Length == t.Entries.Length && s.Entries.All(e => t.Find(e.Name) is { } other && Same(e.Value, other.Value)),
        _ => false,
    };
}
