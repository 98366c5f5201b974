using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads how a vehicle runs: mass, resistance, what it pulls with, its dynamic brake, how its air brakes are handled.</summary>
internal static class RunningReader
{
    /// <summary>What stands under <c>running</c>; null where there is nothing or something of it is wrong.</summary>
    public static Running? Read(MapReader vehicle)
    {
        ReadContext context = vehicle.Context;
        if (vehicle.Take("running") is not { } node || MapReader.Of(node, vehicle.KeySpan("running"), "`running`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("mass", "55 t") & map.Required("axles", "4") & map.Required("resistance", RunningResistance.Forms[0]);
        double mass = map.Positive("mass", Dimension.Kilogram, 1);
        int axles = map.Whole("axles") ?? 1;
        RunningResistance? resistance = Resistance(map);
        Pulling? pulls = map.Take("pulls") is { } pulling ? Pulls(pulling, map.KeySpan("pulls"), axles, context) : null;
        ImmutableArray<(double, double)> dynamic = map.Take("dynamic brake") is { } table ? Dynamic(table, context) : [];
        double? handBrake = map.Has("hand brake") ? map.Positive("hand brake", Dimension.Force, 1) : null;
        BrakeHandling? brakes = map.Take("brakes") is { } handling ? Brakes(handling, map.KeySpan("brakes"), context) : null;
        map.Finish();
        return whole && resistance is not null ? new(map.OwnerSpan) { Mass = mass, Axles = axles, Resistance = resistance, Pulls = pulls, HandBrake = handBrake, DynamicBrake = dynamic, Brakes = brakes } : null;
    }

    private static RunningResistance? Resistance(MapReader map)
    {
        ReadContext context = map.Context;
        double? front = map.Has("front") ? map.Positive("front", Dimension.Area, 1) : null;
        _ = map.Take("front");
        if (map.Take("resistance") is YamlMap own)
        {
            MapReader numbers = new(own, map.KeySpan("resistance"), "`resistance`", context);
            string[] keys = ["constant", "per axle", "per speed", "per area"];
            bool all = keys.Aggregate(true, (good, k) => numbers.Required(k, "0.03") && good);
            double[] values = [.. keys.Select(k => NotBelow(numbers, k))];
            numbers.Finish();
            return all ? new(null, [.. values], front) : null;
        }

        if (!map.Has("resistance"))
        {
            return null;
        }

        string form = map.Choice("resistance", [.. RunningResistance.Forms]);
        if (form != RunningResistance.Modified && front is null)
        {
            context.Add(BookMessages.MissingKey(map.OwnerSpan, "front", map.Owner, "11 m^2"));
        }

        return new(form, [], form == RunningResistance.Modified ? null : front);
    }

    private static double NotBelow(MapReader map, string key)
    {
        double value = map.Number(key, Dimension.One);
        if (value < 0)
        {
            map.Context.Add(BookMessages.OutOfRange(map.SpanOf(key), $"`{key}`", map.Text(key), "0 or more"));
        }

        return Math.Max(0, value);
    }

    private static Pulling? Pulls(YamlNode node, Span at, int axles, ReadContext context)
    {
        if (MapReader.Of(node, at, "`pulls`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("engine", "engine") & map.Required("handle", "throttle") & map.Required("most", "280 kN") & map.Required("power", "{ idle: 0 kW, notch 1: 75 kW }");
        string engine = map.Name("engine", NameUse.Item) ?? "", handle = map.Name("handle", NameUse.Item) ?? "";
        double most = map.Positive("most", Dimension.Force, 1), costs = map.Share("head-end costs", 0);
        int driven = map.Whole("driven axles") ?? axles;
        if (driven > axles)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("driven axles"), "`driven axles`", map.Text("driven axles"), $"at most the {axles} axles that there are"));
        }

        ImmutableSortedDictionary<string, double> power = map.Take("power") is { } table ? Power(table, handle, context) : ImmutableSortedDictionary<string, double>.Empty;
        map.Finish();
        return whole && engine.Length > 0 && handle.Length > 0 && !power.IsEmpty ? new(engine, handle, power, most, driven, costs) : null;
    }

    private static ImmutableSortedDictionary<string, double> Power(YamlNode node, string handle, ReadContext context)
    {
        var power = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (YamlEntry e in MapReader.AsMap(node, "`power`", context)?.Entries ?? [])
        {
            if (Values.Scalar(e.Value, $"`{e.Name}`", context) is not { } s || Values.Quantity(s, Dimension.Power, context) is not { } q)
            {
                continue;
            }

            if (q.Si < 0)
            {
                context.Add(BookMessages.OutOfRange(s.Span, $"`{e.Name}`", s.Value, "0 kW or more"));
                continue;
            }

            UsesPosition(handle, e.Name, e.Key.Span, context);
            power[e.Name] = q.Si;
        }

        if (power.Count > 0 && power.Values.Max() <= 0)
        {
            context.Add(BookMessages.BadTable(node.Span, "no position of `power` pulls", "give the power at the rail of at least one of them"));
        }

        return power.ToImmutable();
    }

    private static ImmutableArray<(double Speed, double Force)> Dynamic(YamlNode node, ReadContext context)
    {
        if (node is not YamlList list)
        {
            context.Add(BookMessages.WrongShape(node.Span, "`dynamic brake`", "a list of speeds and forces", node.Described));
            return [];
        }

        List<(double Speed, double Force)> rows = [];
        foreach (YamlNode one in list.Items)
        {
            if (MapReader.Of(one, one.Span, "the row", context) is not { } map)
            {
                continue;
            }

            bool whole = map.Required("speed", "25 mph") & map.Required("force", "80 kN");
            double? speed = map.NumberOrNull("speed", Dimension.Speed), force = map.NumberOrNull("force", Dimension.Force);
            map.Finish();
            if (speed is < 0 || force is < 0)
            {
                context.Add(BookMessages.OutOfRange(one.Span, "the row", "less than 0", "a speed and a force of 0 or more"));
            }
            else if (speed is { } v && rows.Count > 0 && !(v > rows[^1].Speed))
            {
                context.Add(BookMessages.BadTable(one.Span, "`speed` does not rise from row to row", "sort the rows and give no value twice"));
            }
            else if (whole && speed is { } at && force is { } newtons)
            {
                rows.Add((at, newtons));
            }
        }

        return [.. rows];
    }

    private static BrakeHandling? Brakes(YamlNode node, Span at, ReadContext context)
    {
        if (MapReader.Of(node, at, "`brakes`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("let go", "{ brake handle: release }") & map.Required("service", "{ brake handle: full service }") & map.Required("emergency", "{ brake handle: emergency }");
        ImmutableSortedDictionary<string, string> letGo = Handles(map, "let go"), service = Handles(map, "service"), emergency = Handles(map, "emergency");
        double planned = map.Share("planned", 0.6);
        map.Finish();
        if (planned <= 0)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("planned"), "`planned`", "0", "more than 0 %: a stop is planned with some brake"));
            return null;
        }

        return whole ? new(letGo, service, emergency, planned) : null;
    }

    private static ImmutableSortedDictionary<string, string> Handles(MapReader map, string key)
    {
        var handles = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (YamlEntry e in map.Take(key) is { } node ? MapReader.AsMap(node, $"`{key}`", map.Context)?.Entries ?? [] : [])
        {
            if (Values.Scalar(e.Value, $"`{e.Name}`", map.Context) is { } s)
            {
                map.Context.Uses(NameUse.Item, e.Name, e.Key.Span);
                UsesPosition(e.Name, s.Value.Trim(), s.Span, map.Context);
                handles[e.Name] = s.Value.Trim();
            }
        }

        return handles.ToImmutable();
    }

    private static void UsesPosition(string handle, string position, Span span, ReadContext context)
    {
        string owner = context.Owner;
        context.Owner = handle;
        context.Uses(NameUse.Position, position, span);
        context.Owner = owner;
    }
}
