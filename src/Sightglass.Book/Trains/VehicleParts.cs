using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Book.Trains;

/// <summary>The parts of one vehicle under their names and at their places in the train. Formulas stay as written: the plant reads them in the vehicle's own names.</summary>
internal sealed class VehicleParts(Stand stand)
{
    private readonly Vehicle _vehicle = stand.Vehicle;

    public Item Of(Item item) => item with
    {
        Name = _vehicle.NameOf(item.Name),
        Vehicle = _vehicle,
        Position = item.Position is { } p ? stand.Move(p) : null,
        Places = Names(item.Places),
        Parameters = _vehicle.IsTheMachine ? item.Parameters : item.Parameters.SetItems(item.Kind.Parameters.Where(NamesItems).Where(p => item.Parameters.ContainsKey(p.Name)).Select(p => Renamed(p.Name, item))),
        Ports = item.Ports.IsEmpty ? item.Ports : item.Ports.ToImmutableSortedDictionary(p => p.Key, p => stand.Move(p.Value), StringComparer.Ordinal),
        From = Of(item.From),
        To = Of(item.To),
        Holds = Names(item.Holds),
        ConnectsTo = Names(item.ConnectsTo),
    };

    public Place Of(Place place) => place with { Name = _vehicle.NameOf(place.Name), Position = stand.Move(place.Position), Vehicle = _vehicle };

    public Leg Of(Leg leg) => leg with { From = _vehicle.NameOf(leg.From), To = _vehicle.NameOf(leg.To), Through = [.. leg.Through.Select(_vehicle.NameOf)] };

    public Fact Of(Fact fact) => fact with { Name = _vehicle.NameOf(fact.Name), Vehicle = _vehicle };

    public Sign Of(Sign sign) => sign with { Name = _vehicle.NameOf(sign.Name), Places = Names(sign.Places), Vehicle = _vehicle };

    public Hazard Of(Hazard hazard) =>
        hazard with { Name = _vehicle.NameOf(hazard.Name), Places = Names(hazard.Places), Items = Names(hazard.Items), Ends = Names(hazard.Ends), Vehicle = _vehicle };

    private static bool NamesItems(KindParameter p) => p.Type is ParameterType.Item or ParameterType.Items or ParameterType.Pins;

    private KeyValuePair<string, ParameterValue> Renamed(string parameter, Item item)
    {
        ParameterValue value = item.Parameters[parameter];
        ImmutableArray<string> names = Names(value.Names);
        return new(parameter, value with { Names = names, Text = names is [var only] ? only : value.Text });
    }

    private PortReference? Of(PortReference? end) =>
        end is null || !end.IsItem ? end : end with { Item = _vehicle.NameOf(end.Item) };

    private ImmutableArray<string> Names(ImmutableArray<string> names) => names.IsDefault || _vehicle.IsTheMachine ? names : [.. names.Select(_vehicle.NameOf)];
}
