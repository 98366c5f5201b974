using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>
/// Reads the keys of one map. Remembers which keys were asked for; <see cref="Finish"/> reports the others as unknown.
/// </summary>
internal sealed class MapReader(YamlMap map, Span ownerSpan, string owner, ReadContext context)
{
    private readonly SortedSet<string> _known = new(StringComparer.Ordinal);

    public string Owner => owner;

    /// <summary>Where the owner is named.</summary>
    public Span OwnerSpan => ownerSpan;

    public ReadContext Context => context;

    public IEnumerable<YamlEntry> Unread => map.Entries.Where(e => !_known.Contains(e.Name));

    /// <summary>A reader for a node that must be a map; nothing written counts as an empty one. Reports anything else.</summary>
    public static MapReader? Of(YamlNode node, Span ownerSpan, string owner, ReadContext context)
    {
        YamlMap? map = AsMap(node, owner, context);
        return map is null ? null : new(map, ownerSpan, owner, context);
    }

    public static YamlMap? AsMap(YamlNode node, string owner, ReadContext context)
    {
        switch (node)
        {
            case YamlMap map:
                return map;
            case YamlScalar { IsNull: true }:
                return new YamlMap(node.Span, []);
            default:
                context.Add(BookMessages.WrongShape(node.Span, owner, "a map of keys", node.Described));
                return null;
        }
    }

    /// <summary>What follows a comma of a text between braces without quotes reads as a key without a value.</summary>
    public static bool IsRestOfText(YamlEntry e)
    {
        if (e is not { Key.IsPlain: true, Value: YamlScalar { IsPlain: true, Value: "" } } || e.Key.Span.Source is not { } source)
        {
            return false;
        }

        ReadOnlySpan<char> before = source.Text.AsSpan(0, e.Key.Span.Start).TrimEnd();
        return before.EndsWith(",");
    }

    /// <summary>The value of a key, or null where it is absent; from now on the key is known.</summary>
    public YamlNode? Take(string key)
    {
        _known.Add(key);
        return map.Find(key)?.Value;
    }

    public bool Has(string key) => map.Find(key) is not null;

    public Span SpanOf(string key) => map.Find(key)?.Value.Span ?? ownerSpan;

    public Span KeySpan(string key) => map.Find(key)?.Key.Span ?? ownerSpan;

    /// <summary>A single value that is written and not empty, or null.</summary>
    public YamlScalar? Scalar(string key) => Take(key) is { } node ? Values.Scalar(node, $"`{key}`", context) : null;

    public string Text(string key, string absent = "") => Scalar(key)?.Value.Trim() ?? absent;

    /// <summary>SI value of a key, or <paramref name="absent"/>.</summary>
    public double Number(string key, Dimension dimension, double absent = 0) =>
        Scalar(key) is { } s ? Values.Quantity(s, dimension, context)?.Si ?? absent : absent;

    public double? NumberOrNull(string key, Dimension dimension) =>
        Scalar(key) is { } s ? Values.Quantity(s, dimension, context)?.Si : null;

    /// <summary>A positive SI value of a key.</summary>
    public double Positive(string key, Dimension dimension, double absent)
    {
        if (Scalar(key) is not { } s || Values.Quantity(s, dimension, context) is not { } q)
        {
            return absent;
        }

        if (q.Si > 0)
        {
            return q.Si;
        }

        context.Add(BookMessages.OutOfRange(s.Span, $"`{key}`", s.Value, "more than zero"));
        return absent;
    }

    /// <summary>A whole number, 1 or more; null where the key is absent or holds something else.</summary>
    public int? Whole(string key)
    {
        if (Scalar(key) is not { } s)
        {
            return null;
        }

        if (int.TryParse(s.Value, NumberStyles.None, CultureInfo.InvariantCulture, out int whole) && whole > 0)
        {
            return whole;
        }

        context.Add(BookMessages.OutOfRange(s.Span, $"`{key}`", s.Value, "a whole number, 1 or more"));
        return null;
    }

    /// <summary>A range of which no part lies below zero, SI.</summary>
    public QuantityRange NotNegative(string key, Dimension dimension, QuantityRange absent)
    {
        if (Scalar(key) is not { } s || Values.Range(s, dimension, context) is not { } r)
        {
            return absent;
        }

        if (r.From < 0)
        {
            context.Add(BookMessages.OutOfRange(s.Span, $"`{key}`", s.Value, "0 or more"));
        }

        return r;
    }

    /// <summary>A share from 0 to 1.</summary>
    public double Share(string key, double absent)
    {
        if (Scalar(key) is not { } s || Values.Quantity(s, Dimension.One, context) is not { } q)
        {
            return absent;
        }

        if (q.Si is < 0 or > 1)
        {
            context.Add(BookMessages.OutOfRange(s.Span, $"`{key}`", s.Value, "0 % to 100 %"));
        }

        return Math.Clamp(q.Si, 0, 1);
    }

    /// <summary>Texts of a list, or of a single value, with their places.</summary>
    public ImmutableArray<YamlScalar> List(string key) => Take(key) is { } node ? Values.List(node, $"`{key}`", context) : [];

    /// <summary>Elements of a list; nothing written counts as none.</summary>
    public ImmutableArray<YamlNode> Elements(string key)
    {
        switch (Take(key))
        {
            case null or YamlScalar { IsNull: true }:
                return [];
            case YamlList list:
                return [.. list.Items];
            case { } other:
                context.Add(BookMessages.WrongShape(other.Span, $"`{key}`", "a list", other.Described));
                return [];
        }
    }

    /// <summary>Entries of a map from names that the author chose; nothing written counts as none.</summary>
    public ImmutableArray<YamlEntry> Entries(string key) => Take(key) is { } node && AsMap(node, $"`{key}`", context) is { } entries ? [.. entries.Entries] : [];

    /// <summary>A formula as it is written, to be read where it is bound to a plant; null where the key is absent.</summary>
    public FormulaText? Formula(string key) => Scalar(key) is { } s ? new(s.Value.Trim(), Values.Content(s)) : null;

    /// <summary>Names of a list, noted as references.</summary>
    public ImmutableArray<string> Names(string key, NameUse use)
    {
        ImmutableArray<YamlScalar> list = List(key);
        foreach (YamlScalar s in list)
        {
            context.Uses(use, s.Value, s.Span);
        }

        return [.. list.Select(s => s.Value)];
    }

    /// <summary>A single name, noted as a reference, or null.</summary>
    public string? Name(string key, NameUse use)
    {
        if (Take(key) is null or YamlScalar { IsNull: true } || Scalar(key) is not { } s)
        {
            return null;
        }

        context.Uses(use, s.Value, s.Span);
        return s.Value;
    }

    /// <summary>A choice from a few words, or the first of them.</summary>
    public string Choice(string key, params ReadOnlySpan<string> choices)
    {
        if (Scalar(key) is not { } s)
        {
            return choices[0];
        }

        if (choices.Contains(s.Value))
        {
            return s.Value;
        }

        context.Add(BookMessages.NotAChoice(s.Span, $"`{key}`", s.Value, choices.ToArray()));
        return choices[0];
    }

    public bool YesNo(string key, bool absent) => Scalar(key) is { } s ? Values.YesNo(s, $"`{key}`", context) ?? absent : absent;

    /// <summary>Reports a key that must be there.</summary>
    /// <returns>True where it is.</returns>
    public bool Required(string key, string example)
    {
        _known.Add(key);
        bool has = Has(key);
        if (!has && !context.Found.IsDamaged(ownerSpan.Source))
        {
            context.Add(BookMessages.MissingKey(ownerSpan, key, owner, example));
        }

        return has;
    }

    /// <summary>Reports every key that nobody asked for.</summary>
    public void Finish()
    {
        // In a file with unreadable lines only what is nearly right is surely meant to stand here.
        bool onlyNear = context.Found.IsDamaged(map.Span.Source);
        foreach (YamlEntry e in Unread.Where(e => !context.Found.IsDamaged(e.Key.Span)))
        {
            bool isNear = Nearest.Find(e.Name, _known) is not null || _known.Contains(e.Name.Split(':')[0]);
            if (isNear || !onlyNear)
            {
                context.Add(!isNear && IsRestOfText(e)
                    ? BookMessages.TextWithComma(e.Key.Span, e.Name)
                    : BookMessages.UnknownKey(e.Key.Span, e.Name, owner, _known));
            }
        }
    }
}
