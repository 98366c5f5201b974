using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>
/// Where a change is written. An item is changed where the author wrote it; the part of an assembly under <c>changes</c> of its use, so that other uses stay as they are;
/// what differs on a road number under its modifications.
/// </summary>
internal sealed class ChangeEdit(ClassBook book, ClassBook owner, BookChange change, Func<SourceText, FileText> files)
{
    /// <summary>The modification that holds what was found on a machine: it has no date, so that dated ones go over it.</summary>
    private const string AsFound = "As found";

    /// <summary>The file with the edit; null where the text is written in a way that cannot be edited.</summary>
    public (FileText File, TextEdit Edit)? Find()
    {
        if (!owner.Items.TryGetValue(change.Target, out Item? item))
        {
            return At(owner.Places[change.Target].Span) is var (placeFile, place) ? Set(placeFile, place) : null;
        }

        if (change.RoadNumber is { } number)
        {
            RoadNumber machine = book.RoadNumbers[number];
            return book.Items.ContainsKey(change.Target) || IsPart(item.Span) ? OnRoadNumber(machine) : Own(item.Span);
        }

        return Own(item.Span);
    }

    private static bool IsPart(Span span) => span.Source!.SeenFrom.Source is not null;

    private (FileText, TextEdit)? Own(Span span)
    {
        if (!IsPart(span))
        {
            return At(span) is var (file, entry) ? Set(file, entry) : null;
        }

        while (span.Source!.SeenFrom.Source is not null)
        {
            span = span.Source.SeenFrom;
        }

        return At(span) is var (useFile, use) && use.Value is YamlMap body ? Under(useFile, body, "changes", Changed()) : null;
    }

    /// <summary>The last modification that sets the key already, else the one for what was found.</summary>
    private (FileText, TextEdit)? OnRoadNumber(RoadNumber machine)
    {
        Modification? sets = machine.Modifications.OrderBy(m => m.Since ?? DateOnly.MinValue)
            .LastOrDefault(m => m.Changes.Any(c => c.Name == change.Target && c.Value is YamlMap keys && keys.Find(change.Property) is not null));
        Modification? found = sets ?? machine.Modifications.FirstOrDefault(m => m.Name == AsFound && m.Since is null);
        if (found is not null)
        {
            FileText file = files(found.Span.Source!.Origin);
            return file.MapAt(found.Span.Start) is { } modification ? Under(file, modification, "changes", Changed()) : null;
        }

        if (At(machine.Span) is not var (numbers, entry))
        {
            return null;
        }

        YamlMap added = NodeText.Map(("name", NodeText.Text(AsFound)), ("text", NodeText.Text("What was found on the machine and is not in the class.")), ("changes", Changed()));
        YamlList list = new(default, [added]);
        return entry.Value switch
        {
            YamlMap { Entries.Length: > 0 } map => map.Find("modifications") switch
            {
                null => (numbers, numbers.Insert(map, "modifications", list)),
                { Value: YamlList { Items.Length: > 0 } some } => (numbers, numbers.Append(some, added)),
                var none => (numbers, numbers.Replace(none, list)),
            },
            _ => (numbers, numbers.Replace(entry, NodeText.Map(("modifications", list)))),
        };
    }

    private YamlMap Changed() => NodeText.Map((change.Target, NodeText.Map((change.Property, NodeText.Text(change.Text ?? "")))));

    /// <summary>Sets what a nest of single keys says below a key of a map, as deep as the keys are there already.</summary>
    private (FileText, TextEdit)? Under(FileText file, YamlMap map, string key, YamlNode value)
    {
        YamlEntry? entry = map.Find(key);
        return (entry?.Value, value) switch
        {
            (null, _) => change.Text is null ? null : (file, file.Insert(map, key, value)),
            (YamlMap { Entries.Length: > 0 } inner, YamlMap { Entries: [var only] }) => Under(file, inner, only.Name, only.Value),
            (YamlScalar, YamlScalar) when change.Text is null => file.Remove(map, entry!) is { } removal ? (file, removal) : null,
            (YamlScalar, YamlScalar) or (YamlScalar { IsNull: true }, _) or (YamlMap, YamlMap) => (file, file.Replace(entry!, value)),
            _ => null,
        };
    }

    private (FileText, TextEdit)? Set(FileText file, YamlEntry entry) => entry.Value is YamlMap { Entries.Length: > 0 } body
        ? Under(file, body, change.Property, NodeText.Text(change.Text ?? ""))
        : change.Text is null ? null : (file, file.Replace(entry, NodeText.Map((change.Property, NodeText.Text(change.Text)))));

    private (FileText File, YamlEntry Entry)? At(Span key)
    {
        FileText file = files(key.Source!.Origin);
        return file.EntryAt(key.Start) is { } entry ? (file, entry) : null;
    }
}
