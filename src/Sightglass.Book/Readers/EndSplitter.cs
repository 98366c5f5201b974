using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>
/// Splits the ends of paths into item and port: at the last comma behind which a port of that item stands
/// (<c>forward compartment, supply pickup</c>; both parts may have commas of their own).
/// </summary>
internal sealed class EndSplitter(IReadOnlyDictionary<string, Item> items, ReadContext context)
{
    /// <summary>No names of item and port are longer together.</summary>
    private const int Longest = 300;

    public IEnumerable<Item> SplitAll() => items.Values.Select(Split).ToList();

    private Item Split(Item item)
    {
        Item split = item with { From = Split(item.From), To = Split(item.To) };
        if (split is { From: { } from, To: { } to } && from.Item == to.Item && from.Port == to.Port)
        {
            context.Add(BookMessages.ToItself(to.Span, $"`{item.Name}`", to.Item));
        }

        return split;
    }

    private PortReference? Split(PortReference? end)
    {
        if (end is null || end.Item == PortReference.Outside)
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

        if (items.TryGetValue(end.Item, out Item? whole))
        {
            CheckStore(whole, end.Span);
            return end;
        }

        ReportUnknown(end);
        return end;
    }

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

    private void CheckStore(Item item, Span span)
    {
        if (item.Kind.Role != KindRole.Store && !item.IsKindUnknown)
        {
            context.AddMissing(BookMessages.NotAStore(span, item.Name, item.Kind.Name));
        }
    }

    /// <summary>No item of the whole name: a port that is not there where the part before a comma is an item, else an item that is not there.</summary>
    private void ReportUnknown(PortReference end)
    {
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
