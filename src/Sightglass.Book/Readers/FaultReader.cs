using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads a fault of a situation: which, on what, when, and the values its kind asks for.</summary>
internal sealed class FaultReader(ReadContext context, StartScope scope, EachCar each)
{
    public FaultStart? Read(YamlNode node)
    {
        if (MapReader.Of(node, node.Span, "the fault", context) is not { } map)
        {
            return null;
        }

        bool whole = map.Required("fault", "FAULT") & map.Required("on", "[ ITEM ]");
        YamlScalar? fault = map.Scalar("fault");
        ImmutableArray<YamlScalar> on = [.. map.List("on").SelectMany(each.Expand)];
        QuantityRange after = map.NotNegative("after", Dimension.Second, new(0, 0, UnitTable.SiOf(Dimension.Second)));
        double chance = map.Share("chance", 1);
        if (!whole || fault is null || on.Length == 0)
        {
            return null;
        }

        KindFault[] possible = [.. on.Select(s => FaultOf(s, fault)).OfType<KindFault>()];
        ImmutableArray<StartValue> values = [.. Parameters(possible).Select(p => Value(map, p)).OfType<StartValue>()];
        if (possible.Length > 0)
        {
            map.Finish();
        }

        return new(fault.Value, [.. on.Select(s => s.Value)], node.Span) { AfterFrom = after.From, AfterTo = after.To, Chance = chance, Values = values };
    }

    private KindFault? FaultOf(YamlScalar name, YamlScalar fault)
    {
        if (scope.Item(name.Value, name.Span, context) is not { IsKindUnknown: false } item)
        {
            return null;
        }

        KindFault? found = item.Kind.Faults.FirstOrDefault(f => f.Name == fault.Value);
        if (found is null)
        {
            context.AddMissing(BookMessages.NoFault(fault.Span, fault.Value, item.Name, [.. item.Kind.Faults.Select(f => f.Name)]));
        }

        return found;
    }

    private static IEnumerable<KindParameter> Parameters(KindFault[] faults) => faults.SelectMany(f => f.Parameters).DistinctBy(p => p.Name);

    private StartValue? Value(MapReader map, KindParameter p)
    {
        if (map.Take(p.Name) is not { } node)
        {
            return p.Required && !map.Required(p.Name, ParameterTexts.Example(p)) ? null : Default(p);
        }

        YamlEntry entry = new(new YamlScalar(map.KeySpan(p.Name), p.Name, IsPlain: true), node);
        return p.Type == ParameterType.Quantity ? Number(entry, p) : Choice(entry, p);
    }

    private StartValue? Number(YamlEntry entry, KindParameter p)
    {
        StartValue? value = StartValueReader.Number(entry, p.Dimension, context);
        if (value is not null && !(ParameterTexts.IsWithin(p, value.From) && ParameterTexts.IsWithin(p, value.To)))
        {
            context.Add(BookMessages.OutOfRange(entry.Value.Span, $"`{p.Name}`", ((YamlScalar)entry.Value).Value, ParameterTexts.Limits(p)));
        }

        return value is null ? null : value with { IsWhole = p.IsWhole };
    }

    private StartValue? Choice(YamlEntry entry, KindParameter p)
    {
        StartValue? value = StartValueReader.Choice(entry, context);
        string[] choices = p.Type == ParameterType.YesNo ? ["yes", "no"] : p.Choices.IsDefaultOrEmpty ? [] : [.. p.Choices];
        foreach (string wrong in value is null || choices.Length == 0 ? [] : value.OneOf.Where(c => !choices.Contains(c)))
        {
            context.Add(BookMessages.NotAChoice(entry.Value.Span, $"`{p.Name}`", wrong, choices));
        }

        return value;
    }

    private static StartValue? Default(KindParameter p)
    {
        if (p.Default is null)
        {
            return null;
        }

        ParameterValue value = ParameterTexts.Default(p);
        return p.Type == ParameterType.Quantity
            ? new(p.Name, Span.None) { From = value.Number, To = value.Number, Unit = value.Unit }
            : new(p.Name, Span.None) { OneOf = [value.Text] };
    }
}
