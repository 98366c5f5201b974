using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Readers;

/// <summary>The names that a situation may set: controls, <c>QUANTITY of ITEM</c>, the inputs of the world.</summary>
internal sealed class StartScope(IReadOnlyDictionary<string, Item> items, IReadOnlySet<string> declared)
{
    private const string Of = " of ";

    /// <summary>Whether what a condition says holds at the start, in the order of its values.</summary>
    private static readonly ImmutableArray<string> s_conditions = ["no", "yes"];

    /// <summary>No name of quantity and item is longer.</summary>
    private const int Longest = 300;

    public IReadOnlyDictionary<string, Item> Items => items;

    /// <summary>Whether an item has this name, or a quantity of one could have.</summary>
    public bool Knows(string name)
    {
        for (int at = name.IndexOf(Of, StringComparison.Ordinal); at > 0; at = name.IndexOf(Of, at + 1, StringComparison.Ordinal))
        {
            if (items.ContainsKey(name[(at + Of.Length)..]))
            {
                return true;
            }
        }

        return items.ContainsKey(name);
    }

    /// <summary>An item by name, or null; reports a name that is declared nowhere.</summary>
    public Item? Item(string name, Span span, ReadContext context)
    {
        if (items.TryGetValue(name, out Item? item))
        {
            return item;
        }

        if (!declared.Contains(name))
        {
            context.Uses(NameUse.Item, name, span);
        }

        return null;
    }

    public StartMeaning? Find(string name, Span span, ReadContext context)
    {
        if (WorldInput.Find(name) is { } input)
        {
            return new(input.Dimension, default, input);
        }

        if (items.TryGetValue(name, out Item? control) && (control.Positions.Length > 0 || control.IsKindUnknown))
        {
            return control.IsKindUnknown ? null : new(default, control.Positions);
        }

        return QuantityOf(name, span, context);
    }

    private StartMeaning? QuantityOf(string name, Span span, ReadContext context)
    {
        if (name.Length > Longest)
        {
            NotFound(name, span, context);
            return null;
        }

        for (int at = name.IndexOf(Of, StringComparison.Ordinal); at > 0; at = name.IndexOf(Of, at + 1, StringComparison.Ordinal))
        {
            string itemName = name[(at + Of.Length)..];
            if (!items.TryGetValue(itemName, out Item? item))
            {
                continue;
            }

            if (item.IsKindUnknown)
            {
                return null;
            }

            string wanted = name[..at];
            KindQuantity? quantity = item.Kind.Quantities.FirstOrDefault(q => q.Name == wanted);
            if (quantity is null)
            {
                context.AddMissing(BookMessages.NoQuantity(span, wanted, itemName, [.. item.Kind.Quantities.Select(q => q.Name)]));
                return null;
            }

            return quantity.IsCondition ? new(default, s_conditions) : new(quantity.Dimension, default);
        }

        NotFound(name, span, context);
        return null;
    }

    private void NotFound(string name, Span span, ReadContext context)
    {
        int at = name.IndexOf(Of, StringComparison.Ordinal);
        string item = at > 0 ? name[(at + Of.Length)..] : name;
        if (declared.Contains(item) && !items.ContainsKey(item))
        {
            return;
        }

        IEnumerable<string> operated = items.Values.Where(i => i.Positions.Length > 0).Select(i => i.Name);
        IEnumerable<string> measured = items.Values.SelectMany(i => i.Kind.Quantities.Select(q => $"{q.Name}{Of}{i.Name}"));
        context.AddMissing(BookMessages.NoStart(span, name, context.Found.Similar(WorldInput.All.Select(w => w.Name).Concat(operated).Concat(measured))));
    }
}
