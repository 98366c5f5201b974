using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads routes: stretches up to their mileposts, named places, how the rail may be.</summary>
internal static class RouteReader
{
    /// <summary>Rise over run of what wheels on rails can still climb or hold.</summary>
    private const double Steepest = 0.15;

    /// <summary>m; longer lines are told in parts.</summary>
    private const double Longest = 2_000_000;

    /// <summary>Degrees by 100 ft of arc: a radius of some 25 m.</summary>
    private const double Sharpest = 70;

    private const double ArcMetres = 30.48;

    /// <summary>A route that can be run over; null where something of it is wrong.</summary>
    public static Route? Read(YamlEntry entry, ReadContext context)
    {
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the route `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        double from = map.Number("from", Dimension.Metre);
        bool whole = map.Required("stretches", "[ { to: 3 mi, limit: 60 mph } ]");
        Route route = new(entry.Name, entry.Key.Span)
        {
            Text = map.Text("text"),
            From = from,
            Stretches = map.Take("stretches") is { } node ? Stretches(node, from, context) : [],
            Rails = map.Take("rail") is { } rails ? Rails(rails, context) : [new("dry", entry.Key.Span, 0.25, 0.30)],
        };
        route = route with { Places = map.Take("places") is { } places ? Places(places, route, context) : [] };
        map.Finish();
        return whole && !route.Stretches.IsEmpty && !route.Rails.IsEmpty ? route : null;
    }

    private static ImmutableArray<Stretch> Stretches(YamlNode node, double from, ReadContext context)
    {
        if (node is not YamlList list)
        {
            context.Add(BookMessages.WrongShape(node.Span, "`stretches`", "a list", node.Described));
            return [];
        }

        if (list.Items.Length == 0)
        {
            context.Add(BookMessages.BadTable(node.Span, "`stretches` has no stretch", "write where the first one ends: `- { to: 3 mi, limit: 60 mph }`"));
        }

        var read = ImmutableArray.CreateBuilder<Stretch>();
        double at = from;
        bool good = true;
        foreach (YamlNode one in list.Items)
        {
            if (Stretch(one, at, context) is not { } stretch)
            {
                good = false;
                continue;
            }

            read.Add(stretch);
            at = stretch.To;
        }

        if (at - from > Longest)
        {
            context.Add(BookMessages.BadTable(node.Span, "the route is longer than 2000 km", "tell it in parts"));
            good = false;
        }

        return good ? read.ToImmutable() : [];
    }

    private static Stretch? Stretch(YamlNode node, double from, ReadContext context)
    {
        if (MapReader.Of(node, node.Span, "the stretch", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("to", "3 mi") & map.Required("limit", "60 mph");
        double? to = map.NumberOrNull("to", Dimension.Metre);
        Stretch stretch = new(
            node.Span, from, to ?? from, Within(map, "grade", "no steeper than 15 %", v => Math.Abs(v) <= Steepest), Curve(map, context), map.Positive("limit", Dimension.Speed, 1), map.Share("holds", 1));
        map.Finish();
        if (to is { } end && !(end > from))
        {
            context.Add(BookMessages.BadTable(map.SpanOf("to"), "`to` does not rise from stretch to stretch", "each stretch begins where the one before it ends, the first at `from` of the route"));
            return null;
        }

        if (stretch.Holds <= 0)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("holds"), "`holds`", "0", "more than 0 %: a rail that holds nothing carries no train"));
            return null;
        }

        return whole && to is not null ? stretch : null;
    }

    /// <summary>Degrees by 100 ft of arc, from an angle or a radius.</summary>
    private static double Curve(MapReader map, ReadContext context)
    {
        double degrees = Within(map, "curve", "0 deg to 70 deg, by 100 ft of arc", v => v >= 0 && v * 180 / Math.PI <= Sharpest) * 180 / Math.PI;
        if (!map.Has("radius"))
        {
            return degrees;
        }

        if (map.Has("curve"))
        {
            context.Add(BookMessages.OneOfKeys(map.KeySpan("radius"), "radius", "curve", "the stretch"));
        }

        double radius = map.Positive("radius", Dimension.Metre, 1000), byRadius = ArcMetres / radius * 180 / Math.PI;
        if (byRadius > Sharpest)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("radius"), "`radius`", map.Text("radius"), "25 m or more"));
        }

        return byRadius;
    }

    private static double Within(MapReader map, string key, string limits, Func<double, bool> isWithin)
    {
        if (map.NumberOrNull(key, Dimension.One) is not { } value)
        {
            return 0;
        }

        if (isWithin(value))
        {
            return value;
        }

        map.Context.Add(BookMessages.OutOfRange(map.SpanOf(key), $"`{key}`", map.Text(key), limits));
        return 0;
    }

    private static ImmutableArray<RailCondition> Rails(YamlNode node, ReadContext context) =>
        MapReader.AsMap(node, "`rail`", context) is not { } map ? [] : [.. map.Entries.Select(e => Rail(e, context)).OfType<RailCondition>()];

    private static RailCondition? Rail(YamlEntry entry, ReadContext context)
    {
        NameRules.Check(entry.Key, context);
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the rail `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("adhesion", "0.25");
        double adhesion = map.Share("adhesion", 0.25), sanded = map.Share("sanded", adhesion);
        map.Finish();
        if (adhesion <= 0)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("adhesion"), "`adhesion`", "0", "more than 0"));
            return null;
        }

        if (sanded < adhesion)
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("sanded"), "`sanded`", map.Text("sanded"), "no less than `adhesion`: sand is given to hold more"));
            return null;
        }

        return whole ? new(entry.Name, entry.Key.Span, adhesion, sanded) : null;
    }

    private static ImmutableArray<RoutePlace> Places(YamlNode node, Route route, ReadContext context)
    {
        if (MapReader.AsMap(node, "`places`", context) is not { } map)
        {
            return [];
        }

        return [.. map.Entries.Select(e => Place(e, route, context)).OfType<RoutePlace>().OrderBy(p => p.At).ThenBy(p => p.Span)];
    }

    private static RoutePlace? Place(YamlEntry entry, Route route, ReadContext context)
    {
        NameRules.Check(entry.Key, context);
        if (MapReader.Of(entry.Value, entry.Key.Span, $"the place `{entry.Name}`", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("at", "3 mi");
        double? at = map.NumberOrNull("at", Dimension.Metre);
        double? stops = map.Has("stops") ? map.Positive("stops", Dimension.Second, 60) : null;
        map.Finish();
        if (at is { } there && !route.Stretches.IsEmpty && (there < route.From || there > route.To))
        {
            context.Add(BookMessages.OutOfRange(map.SpanOf("at"), "`at`", map.Text("at"), "on the route, between its first and its last milepost"));
            return null;
        }

        return whole && at is { } milepost ? new(entry.Name, entry.Key.Span, milepost, stops) : null;
    }
}
