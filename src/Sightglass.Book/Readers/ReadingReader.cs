using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>
/// Reads what an indication shows: formula, scale, resolution, normal range, words. Where the kind has <c>bottom</c> and <c>top</c>
/// (a sight glass) the scale runs between them unless given. An indication with neither (a lamp) has no reading of its own.
/// </summary>
internal sealed class ReadingReader(MapReader map, Item item, ReadContext context)
{
    /// <summary>Steps of a scale that has no <c>resolution</c>: our choice.</summary>
    private const double StepsByDefault = 100;

    public Reading? Read()
    {
        YamlScalar? shows = map.Scalar("shows");
        QuantityRange? scale = Scale(shows is not null);
        YamlScalar? resolution = map.Scalar("resolution");
        YamlScalar? normal = map.Scalar("normal range");
        YamlNode? words = map.Take("words");
        if (scale is not { } s)
        {
            return null;
        }

        QuantityRange? normalRange = normal is null ? null : Stretch(normal, s, "`normal range`");
        return new Reading
        {
            Formula = shows?.Value.Trim(),
            Span = shows is null ? item.Span : Values.Content(shows),
            Unit = s.Unit,
            Minimum = s.From,
            Maximum = s.To,
            Resolution = Resolution(resolution, s),
            NormalFrom = normalRange?.From,
            NormalTo = normalRange?.To,
            Words = Words(words, s),
        };
    }

    private QuantityRange? Scale(bool needed)
    {
        if (map.Scalar("scale") is { } scalar)
        {
            QuantityRange? given = AnyRange(scalar);
            if (given is { } r && !(r.From < r.To))
            {
                context.Add(BookMessages.OutOfRange(scalar.Span, "`scale`", scalar.Value, "a range from a smaller to a larger value"));
                return null;
            }

            return given;
        }

        if (item.Parameters.TryGetValue("bottom", out ParameterValue? bottom) && item.Parameters.TryGetValue("top", out ParameterValue? top))
        {
            return Between(bottom, top);
        }

        if (needed && !map.Has("scale"))
        {
            context.Add(BookMessages.NoScale(map.OwnerSpan));
        }

        return null;
    }

    private QuantityRange? Between(ParameterValue bottom, ParameterValue top)
    {
        if (bottom.Number < top.Number)
        {
            return new(bottom.Number, top.Number, top.Unit ?? UnitTable.SiOf(Dimension.Metre));
        }

        context.Add(BookMessages.OutOfRange(top.Span, "`top`", top.Text, "more than `bottom`"));
        return null;
    }

    /// <summary>A range whose dimension is that of its upper end: whatever the instrument shows.</summary>
    private QuantityRange? AnyRange(YamlScalar s)
    {
        int dots = s.Value.LastIndexOf("..", StringComparison.Ordinal);
        string upper = dots < 0 ? s.Value : s.Value[(dots + 2)..];
        Dimension dimension = QuantityText.TryParseAny(upper.Trim(), default, [], out Quantity q) ? q.Dimension : Dimension.One;
        return Values.Range(s, dimension, context);
    }

    private double Resolution(YamlScalar? written, QuantityRange scale)
    {
        double step = (scale.To - scale.From) / StepsByDefault;
        if (written is null || Values.Quantity(written, scale.Dimension, context) is not { } q)
        {
            return step;
        }

        double size = q.Unit.ToSi(q.Value) - q.Unit.ToSi(0);
        if (size > 0 && size <= scale.To - scale.From)
        {
            return size;
        }

        context.Add(BookMessages.OutOfRange(written.Span, "`resolution`", written.Value, "more than zero and no more than the scale"));
        return step;
    }

    private QuantityRange? Stretch(YamlScalar s, QuantityRange scale, string owner)
    {
        if (Values.Range(s, scale.Dimension, context) is not { } r)
        {
            return null;
        }

        double slack = 1e-9 * (scale.To - scale.From);
        if (r.From < scale.From - slack || r.To > scale.To + slack)
        {
            context.Add(BookMessages.OffTheScale(s.Span, owner));
        }

        return r;
    }

    private ImmutableSortedDictionary<string, (double From, double To)> Words(YamlNode? node, QuantityRange scale)
    {
        var words = ImmutableSortedDictionary.CreateBuilder<string, (double From, double To)>(StringComparer.Ordinal);
        if (node is not null && MapReader.AsMap(node, "`words`", context) is { } entries)
        {
            foreach (YamlEntry e in entries.Entries)
            {
                if (NameRules.Check(e.Key, context) && Values.Scalar(e.Value, $"`{e.Name}`", context) is { } s && Stretch(s, scale, $"`{e.Name}`") is { } r)
                {
                    words.Add(e.Name, (r.From, r.To));
                }
            }
        }

        return words.ToImmutable();
    }
}
