using Sightglass.Basics.Language;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Web.Machine;

/// <summary>Where a fault can be, and how that is said: of what two vehicles have between them by both.</summary>
/// <param name="book">Of the machine or the train.</param>
/// <param name="road">The machine's road number; empty for one without.</param>
internal sealed class FaultPlaces(ClassBook book, string road)
{
    /// <summary>Whether it is something of a system and a vehicle; null of either is any.</summary>
    public bool IsOf(Item item, string? system, int? vehicle) =>
        Parts(item).Any(p => system is null || p.System == system) && Parts(item).Any(p => vehicle is null || Ends(p).Contains(vehicle.Value));

    /// <summary>Such as <c>aft supply valve</c>, <c>coupling of 4101 and car 1: brake pipe and main reservoir pipe hoses</c>.</summary>
    public string Words(string name) =>
        book.Items.TryGetValue(name, out Item? item) && item.Kind.Role == KindRole.Mistake && Parts(item).SelectMany(Ends).Distinct().Order().ToArray() is [var one, var other]
            ? Say.With($"coupling of {NameOf(one)} and {NameOf(other)}: {item.Label}")
            : name;

    // A mistake is made at the items that it names.
    private IEnumerable<Item> Parts(Item item) => item.Kind.Role != KindRole.Mistake ? [item]
        : item.Parameters.Values.SelectMany(p => p.Names).Select(n => book.Items.GetValueOrDefault(n)).OfType<Item>();

    // What couples two vehicles is of both.
    private IEnumerable<int> Ends(Item item) => new[] { item.From, item.To }.OfType<PortReference>().Select(e => book.Items.GetValueOrDefault(e.Item)).OfType<Item>()
        .Select(i => i.Vehicle.Index).Append(item.Vehicle.Index).Distinct();

    private string NameOf(int vehicle)
    {
        Vehicle known = book.Vehicles.First(v => v.Index == vehicle);
        return known.IsTheMachine && road.Length > 0 ? road : MachineChoice.WordsOf(known);
    }
}
