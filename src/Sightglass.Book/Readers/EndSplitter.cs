using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>
/// Splits the ends of paths into item and port: at the last comma behind which a port of that item stands
/// (<c>forward compartment, supply pickup</c>; both parts may have commas of their own).
/// </summary>
/// <param name="ports">What uses of assemblies show to the outside.</param>
internal sealed class EndSplitter(IReadOnlyDictionary<string, Item> items, IReadOnlyDictionary<string, ImmutableArray<YamlEntry>> ports, ReadContext context)
{
    /// <summary>No names of item and port are longer together.</summary>
    private const int Longest = 300;

    /// <summary>Ports of uses within uses: more than assemblies may be nested.</summary>
    private const int Deepest = 20;

    private int _depth;

    public IEnumerable<Item> SplitAll()
    {
        foreach (YamlEntry port in ports.Values.SelectMany(p => p))
        {
            PartBehind(port);
        }

        return items.Values.Select(Split).ToList();
    }

    /// <summary>What a port of a use stands for; a port that leads nowhere is reported where it is written.</summary>
    private PortReference? PartBehind(YamlEntry port)
    {
        if (Values.Scalar(port.Value, $"`{port.Name}`", context) is not { } s)
        {
            return null;
        }

        if (_depth >= Deepest)
        {
            context.Add(BookMessages.ToItself(port.Key.Span, "the port", port.Name));
            return null;
        }

        _depth++;
        PortReference? part = Split(new PortReference(s.Value, null, Values.Content(s)), null);
        _depth--;
        return part;
    }

    private Item Split(Item item)
    {
        Item split = item with { From = Split(item.From, item), To = Split(item.To, item) };
        if (split is { From: { } from, To: { } to } && from.Item == to.Item && from.Port == to.Port)
        {
            context.Add(BookMessages.ToItself(to.Span, $"`{item.Name}`", to.Item));
        }

        return split;
    }

    private PortReference? Split(PortReference? end, Item? path)
    {
        if (end is null || !end.IsItem)
        {
            return end;
        }

        foreach ((string name, string port) in Commas(end.Item))
        {
            if (items.TryGetValue(name, out Item? owner) && HasPort(owner, port))
            {
                return new(name, port, end.Span);
            }
        }

        if (Shown(end) is { } shown)
        {
            return PartBehind(shown) is { } part ? part with { Span = end.Span } : end;
        }

        if (items.TryGetValue(end.Item, out Item? whole))
        {
            CheckEnd(whole, path, end.Span);
            return end;
        }

        ReportUnknown(end);
        return end;
    }

    /// <summary>The port of a use that an end names: <c>aft, supply</c>.</summary>
    private YamlEntry? Shown(PortReference end) =>
        Commas(end.Item).Select(c => ports.GetValueOrDefault(c.Name, []).FirstOrDefault(p => p.Name == c.Port)).FirstOrDefault(p => p is not null);

    private static IEnumerable<(string Name, string Port)> Commas(string text)
    {
        if (text.Length > Longest)
        {
            yield break;
        }

        for (int at = text.LastIndexOf(','); at > 0; at = text.LastIndexOf(',', at - 1))
        {
            yield return (text[..at].TrimEnd(), text[(at + 1)..].TrimStart());
        }
    }

    private static bool HasPort(Item item, string port) =>
        item.Ports.ContainsKey(port) || (item.Kind.Role == KindRole.Store && item.Kind.Ports.Any(p => p.Name == port));

    /// <summary>Current ends at wires, a fluid at stores; what a port of a use shows may be either.</summary>
    private void CheckEnd(Item item, Item? path, Span span)
    {
        bool fits = item.IsKindUnknown || path is { IsKindUnknown: true }
            || item.Kind.Role == (path is { Kind.Conducts: true } ? KindRole.Wire : KindRole.Store) || (path is null && item.Kind.Role == KindRole.Wire);
        if (!fits)
        {
            context.AddMissing(path is { Kind.Conducts: true } ? BookMessages.NotAWire(span, item.Name, item.Kind.Name) : BookMessages.NotAStore(span, item.Name, item.Kind.Name));
        }
    }

    /// <summary>No item of the whole name: a port that is not there where the part before a comma is an item, else an item that is not there.</summary>
    private void ReportUnknown(PortReference end)
    {
        foreach ((string name, string? port) in Commas(end.Item).Select(c => (c.Name, (string?)c.Port)).Append((end.Item, null)))
        {
            if (ports.TryGetValue(name, out ImmutableArray<YamlEntry> shown))
            {
                context.AddMissing(BookMessages.NotOfUse(end.Span, name, port, [.. shown.Select(p => p.Name)]));
                return;
            }
        }

        foreach ((string name, string port) in Commas(end.Item))
        {
            if (items.TryGetValue(name, out Item? owner) && !owner.IsKindUnknown)
            {
                context.AddMissing(BookMessages.NoPort(end.Span, port, name, [.. owner.Ports.Keys, .. owner.Kind.Ports.Select(p => p.Name)]));
                return;
            }
        }

        IReadOnlyCollection<string> names = context.Found.Similar(items.Keys);
        string? before = Commas(end.Item).Select(c => c.Name).FirstOrDefault(n => Nearest.Find(n, names) is not null);
        context.Uses(NameUse.Item, Nearest.Find(end.Item, names) is null && before is not null ? before : end.Item, end.Span);
    }
}
