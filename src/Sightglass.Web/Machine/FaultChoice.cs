using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
using Sightglass.Plant.Plans;
using Sightglass.Web.Live;

namespace Sightglass.Web.Machine;

/// <summary>A sort of fault with the items that can have it.</summary>
internal sealed record FaultChoice(string Key, string Words, KindFault Fault, ImmutableArray<string> Items)
{
    /// <summary>Those of a plan: first what stores can have, then the rest, by kind.</summary>
    public static ImmutableArray<FaultChoice> Of(Plan plan, Func<Item, bool> isAsked) =>
    [
        .. from item in plan.Items.Values
           where isAsked(item.Item)
           from fault in item.Item.Kind.Faults
           where item.Faults.ContainsKey(fault.Name)
           group item.Item by (Kind: item.Item.Kind.Name, item.Item.Kind.Role, Fault: fault) into same
           orderby same.Key.Role == KindRole.Store ? 0 : same.Key.Role == KindRole.Indication ? 2 : 1, same.Key.Kind, same.Key.Fault.Name
           select new FaultChoice(
               $"{same.Key.Kind}|{same.Key.Fault.Name}",
               $"{Live.Words.Capital(Say.Word(same.Key.Kind))}: {PositionWords.Of(Say.Word(same.Key.Kind), same.Key.Fault.Name)}",
               same.Key.Fault,
               [.. same.OrderBy(i => i.Position?.X ?? 0).ThenBy(i => i.Name, StringComparer.Ordinal).Select(i => i.Name)]),
    ];

    /// <summary>The unit in which a value is asked for: as the kind's sheet writes it, else the scale's own.</summary>
    public static Unit UnitOf(KindParameter parameter, Item? item)
    {
        string? written = parameter.Default ?? parameter.Minimum;
        int gap = written?.IndexOf(' ', StringComparison.Ordinal) ?? -1;
        return gap >= 0 && UnitTable.Find(written![(gap + 1)..]) is { } unit
            ? unit
            : item?.Reading is { } reading && parameter.Dimension == Dimension.One && written is null ? reading.Unit : UnitTable.SiOf(parameter.Dimension);
    }

    /// <summary>A first value to change: the sheet's own, else one that is plain to see.</summary>
    public static string Usual(KindParameter parameter)
    {
        string written = parameter.Default ?? "";
        int gap = written.IndexOf(' ', StringComparison.Ordinal);
        string number = gap >= 0 ? written[..gap] : written;
        return double.TryParse(number, CultureInfo.InvariantCulture, out _) ? number : parameter.Dimension == Dimension.Metre ? "12" : "15";
    }
}
