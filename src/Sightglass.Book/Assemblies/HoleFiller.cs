using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>
/// Puts the values of one use into the holes of an assembly's texts. A hole that is a whole value takes whatever the use gives, also a list or a map;
/// a finding about it points to where it was given. All else points to the assembly. Both name the other place.
/// </summary>
internal sealed class HoleFiller(YamlEntry use, IReadOnlyDictionary<string, YamlNode> values, ExpansionBudget budget, ReadContext context)
{
    private readonly Dictionary<SourceText, SourceText> _seen = [];

    public YamlEntry Fill(YamlEntry entry) => new(Key(entry.Key), Fill(entry.Value));

    public YamlNode Fill(YamlNode node)
    {
        if (!budget.Take(1))
        {
            return new YamlScalar(Seen(node.Span), "", IsPlain: true);
        }

        return node switch
        {
            YamlScalar s when Holes.Whole(s.Value) is { } hole && values.TryGetValue(hole, out YamlNode? given) => Given(given, s),
            YamlScalar s => Text(s),
            YamlList list => new YamlList(Seen(list.Span), [.. list.Items.Select(Fill)]),
            YamlMap map => new YamlMap(Seen(map.Span), Entries(map)),
            _ => node,
        };
    }

    private ImmutableArray<YamlEntry> Entries(YamlMap map)
    {
        Dictionary<string, YamlEntry> entries = new(StringComparer.Ordinal);
        ImmutableArray<YamlEntry>.Builder all = ImmutableArray.CreateBuilder<YamlEntry>(map.Entries.Length);
        foreach (YamlEntry e in map.Entries.Select(Fill))
        {
            if (entries.TryAdd(e.Name, e))
            {
                all.Add(e);
            }
            else
            {
                context.Add(BookMessages.DuplicateKey(e.Key.Span, e.Name, entries[e.Name].Key.Span));
            }
        }

        return all.ToImmutable();
    }

    private YamlScalar Key(YamlScalar key) => Text(key);

    private YamlScalar Text(YamlScalar s) => Holes.Any(s.Value)
        ? s with { Span = Seen(s.Span), Value = Holes.Fill(s.Value, hole => Word(hole, s)) }
        : s with { Span = Seen(s.Span) };

    private string Word(string hole, YamlScalar s)
    {
        switch (values.GetValueOrDefault(hole))
        {
            case null:
                return ""; // reported: the use lacks it, or the assembly has no such parameter
            case YamlScalar given when budget.TakeText(given.Value.Length):
                return given.Value.Trim();
            case YamlScalar:
                return "";
            case { } other:
                context.Add(BookMessages.NoText(Seen(s.Span), hole, other.Described));
                return "";
        }
    }

    /// <summary>A value that the use gives, seen from the hole that it fills.</summary>
    private YamlNode Given(YamlNode node, YamlScalar hole)
    {
        Dictionary<SourceText, SourceText> seen = [];
        return Seen(node);

        YamlNode Seen(YamlNode part)
        {
            budget.Take(1);
            return part switch
            {
                YamlScalar s => s with { Span = Place(s.Span) },
                YamlList list => new YamlList(Place(list.Span), [.. list.Items.Select(Seen)]),
                YamlMap map => new YamlMap(Place(map.Span), [.. map.Entries.Select(e => new YamlEntry(e.Key with { Span = Place(e.Key.Span) }, Seen(e.Value)))]),
                _ => part,
            };
        }

        Span Place(Span span)
        {
            if (span.Source is not { } source)
            {
                return span;
            }

            if (!seen.TryGetValue(source, out SourceText? here))
            {
                seen[source] = here = source.SeenBy("put in at", hole.Span);
            }

            return span with { Source = here };
        }
    }

    private Span Seen(Span span)
    {
        if (span.Source is not { } source)
        {
            return span;
        }

        if (!_seen.TryGetValue(source, out SourceText? seen))
        {
            _seen[source] = seen = source.SeenBy($"for `{use.Name}` at", use.Key.Span);
        }

        return span with { Source = seen };
    }
}
