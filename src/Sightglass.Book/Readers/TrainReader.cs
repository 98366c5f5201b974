using System.Collections.Immutable;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads trains: vehicles in order, from the head.</summary>
internal static class TrainReader
{
    /// <summary>A train whose vehicles can be named; null where something of it is wrong.</summary>
    public static Train? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the train `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        string text = map.Text("text");
        bool whole = map.Required("vehicles", "[ this machine, CAR ]");
        YamlNode? node = map.Take("vehicles");
        ImmutableArray<Measure> measures = map.Take("measures") is { } given && MapReader.AsMap(given, "`measures`", context) is { } each
            ? [.. each.Entries.Select(e => TruthReader.ReadMeasure(e, context)).OfType<Measure>()]
            : [];
        string? inService = map.Name("in service", NameUse.Situation);
        map.Finish();
        if (!whole || node is not YamlList list)
        {
            if (node is not null)
            {
                context.Add(BookMessages.WrongShape(node.Span, "`vehicles`", "a list", node.Described));
            }

            return null;
        }

        int most = context.Found.Limits.Vehicles;
        List<TrainVehicle> vehicles = [];
        foreach (IEnumerable<TrainVehicle> some in list.Items.Select(n => Vehicles(n, context)))
        {
            vehicles.AddRange(some.Take(most + 1));
            if (vehicles.Count > most)
            {
                context.Add(BookMessages.TrainTooLong(entry.Key.Span, entry.Name, vehicles.Count, most));
                return null;
            }
        }

        int machines = vehicles.Count(v => v.IsThisMachine);
        if (machines != 1)
        {
            context.AddMissing(BookMessages.MachineNotOnce(entry.Key.Span, entry.Name, machines));
            return null;
        }

        return new(entry.Name, entry.Key.Span, text, [.. vehicles]) { Measures = measures, InService = inService };
    }

    private static IEnumerable<TrainVehicle> Vehicles(YamlNode node, ReadContext context)
    {
        if (node is YamlScalar)
        {
            return Values.Scalar(node, "an element of `vehicles`", context) is { } only ? [Vehicle(only, false, context)] : [];
        }

        if (MapReader.Of(node, node.Span, "the vehicle", context) is not { } map)
        {
            return [];
        }

        YamlScalar? type = map.Required("vehicle", "CAR") ? map.Scalar("vehicle") : null;
        int count = map.Whole("count") ?? 1;
        bool turned = map.YesNo("turned", absent: false);
        map.Finish();
        return type is null ? [] : Enumerable.Repeat(Vehicle(type, turned, context), count);
    }

    private static TrainVehicle Vehicle(YamlScalar type, bool turned, ReadContext context)
    {
        TrainVehicle vehicle = new(type.Value.Trim(), turned, type.Span);
        if (!vehicle.IsMachine)
        {
            context.Uses(NameUse.Car, vehicle.Class, type.Span);
        }

        return vehicle;
    }
}
