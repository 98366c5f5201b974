using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads the parameters that a kind sheet lists; what is absent takes its default.</summary>
internal sealed class ParameterReader(MapReader map, ReadContext context)
{
    public ImmutableSortedDictionary<string, ParameterValue> Read(ImmutableArray<KindParameter> parameters)
    {
        var values = ImmutableSortedDictionary.CreateBuilder<string, ParameterValue>(StringComparer.Ordinal);
        foreach (KindParameter p in parameters)
        {
            if ((Given(p) ?? Default(p)) is { } value)
            {
                values[p.Name] = value;
            }
        }

        return values.ToImmutable();
    }

    private ParameterValue? Given(KindParameter p)
    {
        if (p.Required && !map.Required(p.Name, ParameterTexts.Example(p)))
        {
            return null;
        }

        YamlNode? node = map.Take(p.Name);
        return node is null || (!p.Required && node is YamlScalar { IsNull: true, Value.Length: > 0 }) ? null : Value(p, node);
    }

    private static ParameterValue? Default(KindParameter p) => p.Default is null ? null : ParameterTexts.Default(p);

    private ParameterValue? Value(KindParameter p, YamlNode node) => p.Type switch
    {
        ParameterType.Quantity => Scalar(p, node) is { } s ? Quantity(p, s) : null,
        ParameterType.Choice => Scalar(p, node) is { } s ? Choice(p, s) : null,
        ParameterType.YesNo => Scalar(p, node) is { } s ? YesNo(p, s) : null,
        ParameterType.Text or ParameterType.Formula => Scalar(p, node) is { } s ? new(Values.Content(s)) { Text = s.Value.Trim() } : null,
        ParameterType.Item => Scalar(p, node) is { } s ? Items(s.Span, [s]) : null,
        ParameterType.Items => Items(node.Span, Values.List(node, $"`{p.Name}`", context)),
        ParameterType.Pins => Pins(p, node),
        ParameterType.Table => new TableReader(p, context).Read(node),
        ParameterType.ByPosition => ByPosition(p, node),
        _ => null,
    };

    private YamlScalar? Scalar(KindParameter p, YamlNode node) => Values.Scalar(node, $"`{p.Name}`", context);

    private ParameterValue? Quantity(KindParameter p, YamlScalar s)
    {
        if (Values.Quantity(s, p.Dimension, context) is not { } q)
        {
            return null;
        }

        CheckRange(p, q.Si, s, $"`{p.Name}`");
        return new(s.Span) { Number = q.Si, Unit = q.Unit, Text = s.Value };
    }

    private void CheckRange(KindParameter p, double si, YamlScalar s, string owner)
    {
        if (!ParameterTexts.IsWithin(p, si))
        {
            context.Add(BookMessages.OutOfRange(s.Span, owner, s.Value, ParameterTexts.Limits(p)));
        }
    }

    private ParameterValue? Choice(KindParameter p, YamlScalar s)
    {
        if (p.Choices.IsDefault || p.Choices.Contains(s.Value))
        {
            return new(s.Span) { Text = s.Value };
        }

        context.Add(BookMessages.NotAChoice(s.Span, $"`{p.Name}`", s.Value, p.Choices));
        return null;
    }

    private ParameterValue? YesNo(KindParameter p, YamlScalar s) =>
        Values.YesNo(s, $"`{p.Name}`", context) is { } yes ? new(s.Span) { Text = yes ? "yes" : "no", Number = yes ? 1 : 0 } : null;

    private ParameterValue Items(Span span, ImmutableArray<YamlScalar> names)
    {
        foreach (YamlScalar s in names)
        {
            context.Uses(NameUse.Item, s.Value, s.Span);
        }

        return new(span) { Names = [.. names.Select(s => s.Value)], Text = names.Length == 1 ? names[0].Value : "" };
    }

    private ParameterValue? Pins(KindParameter p, YamlNode node)
    {
        if (MapReader.AsMap(node, $"`{p.Name}`", context) is not { } entries)
        {
            return null;
        }

        List<int> pins = [];
        List<YamlScalar> names = [];
        foreach (YamlEntry e in entries.Entries)
        {
            if (!int.TryParse(e.Name, NumberStyles.None, CultureInfo.InvariantCulture, out int pin) || pin is < 1 or > 999)
            {
                context.Add(BookMessages.NotAPin(e.Key.Span, e.Name));
            }
            else if (pins.Contains(pin))
            {
                context.Add(BookMessages.PinTwice(e.Key.Span, e.Name));
            }
            else if (Values.Scalar(e.Value, $"`{e.Name}`", context) is { } s)
            {
                pins.Add(pin);
                names.Add(s);
            }
        }

        return Items(node.Span, [.. names]) with { Pins = [.. pins], Text = "" };
    }

    private ParameterValue? ByPosition(KindParameter p, YamlNode node)
    {
        if (MapReader.AsMap(node, $"`{p.Name}`", context) is not { } entries)
        {
            return null;
        }

        var values = ImmutableSortedDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        foreach (YamlEntry e in entries.Entries)
        {
            if (Values.Scalar(e.Value, $"`{e.Name}`", context) is { } s && Values.Quantity(s, p.Dimension, context) is { } q)
            {
                CheckRange(p, q.Si, s, $"`{e.Name}`");
                values.Add(e.Name, q.Si);
            }
        }

        return new(node.Span) { ByPosition = values.ToImmutable() };
    }
}
