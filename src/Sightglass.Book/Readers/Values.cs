using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Reads single values; reports what does not fit and answers null.</summary>
internal static class Values
{
    /// <summary>A single value that is not empty.</summary>
    public static YamlScalar? Scalar(YamlNode node, string owner, ReadContext context)
    {
        if (node is not YamlScalar s)
        {
            context.Add(BookMessages.WrongShape(node.Span, owner, "a single value", node.Described));
            return null;
        }

        if (s.IsNull || string.IsNullOrWhiteSpace(s.Value))
        {
            context.Add(BookMessages.Empty(s.Span, owner));
            return null;
        }

        return s;
    }

    /// <summary>Texts of a list; a single value counts as a list of one, nothing as none.</summary>
    public static ImmutableArray<YamlScalar> List(YamlNode node, string owner, ReadContext context)
    {
        switch (node)
        {
            case YamlScalar { IsNull: true }:
                return [];
            case YamlScalar s:
                return Scalar(s, owner, context) is null ? [] : [s];
            case YamlList list:
                return [.. list.Items.Select(n => Scalar(n, $"an element of {owner}", context)).OfType<YamlScalar>()];
            default:
                context.Add(BookMessages.WrongShape(node.Span, owner, "a list", node.Described));
                return [];
        }
    }

    /// <summary>Where the content of a value stands, without its quotes.</summary>
    public static Span Content(YamlScalar s) =>
        !s.IsPlain && s.Span.Length == s.Value.Length + 2 && s.Span.Source is { } source ? source.Between(s.Span.Start + 1, s.Span.End - 1) : s.Span;

    public static Quantity? Quantity(YamlScalar s, Dimension dimension, ReadContext context)
    {
        DiagnosticList notes = [];
        bool read = QuantityText.TryParse(s.Value.Trim(), Content(s), dimension, notes, out Quantity q);
        context.Found.AddRange(notes);
        return read ? q : null;
    }

    /// <summary>A range, or a single value as a range of no width.</summary>
    public static QuantityRange? Range(YamlScalar s, Dimension dimension, ReadContext context)
    {
        DiagnosticList notes = [];
        bool read = QuantityRangeText.TryParseValueOrRange(s.Value.Trim(), Content(s), dimension, notes, out QuantityRange r);
        context.Found.AddRange(notes);
        return read ? r : null;
    }

    public static bool? YesNo(YamlScalar s, string owner, ReadContext context)
    {
        switch (s.Value)
        {
            case "yes" or "true":
                return true;
            case "no" or "false":
                return false;
            default:
                context.Add(BookMessages.NotYesNo(s.Span, owner, s.Value));
                return null;
        }
    }
}
