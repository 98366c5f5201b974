using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>Turns what a card words as a condition into a tree of resolved conditions. Null where something was wrong (and reported).</summary>
internal sealed class ConditionCompiler(NameResolver resolver, WrittenNames written)
{
    public Condition? Compile(ConditionPhrase phrase) => phrase switch
    {
        ConditionPhrase.One one => Compile(one.Sentence),
        ConditionPhrase.Any any => Join(any.Parts, any.Span, all: false),
        ConditionPhrase.All all => Join(all.Parts, all.Span, all: true),
        ConditionPhrase.Several several => Join(several.Parts, several.Span, all: true),
        _ => null,
    };

    private Condition? Join(ImmutableArray<ConditionPhrase> parts, Span span, bool all)
    {
        Condition?[] compiled = [.. parts.Select(Compile)];
        return compiled.Contains(null) ? null : Joined([.. compiled.OfType<Condition>()], span, all);
    }

    private static Condition Joined(ImmutableArray<Condition> parts, Span span, bool all)
    {
        if (parts.Length == 1)
        {
            return parts[0];
        }

        return all ? new Condition.All(parts) { Span = span } : new Condition.Any(parts) { Span = span };
    }

    public Condition? Compile(Sentence sentence) => sentence.Operation switch
    {
        Operation.ShowsAtLeast => Shows(sentence, Comparison.AtLeast),
        Operation.ShowsAtMost => Shows(sentence, Comparison.AtMost),
        Operation.ShowsMoreThan => Shows(sentence, Comparison.MoreThan),
        Operation.ShowsLessThan => Shows(sentence, Comparison.LessThan),
        Operation.ShowsExactly => Shows(sentence, Comparison.Exactly),
        Operation.ShowsWord => OfItems(sentence, item => ScaleWord(item, sentence.PhraseAt("word"))),
        Operation.ShowsNotWord => OfItems(sentence, item => Not(ScaleWord(item, sentence.PhraseAt("word")))),
        Operation.IsAtLeast => Compare(sentence, Comparison.AtLeast),
        Operation.IsAtMost => Compare(sentence, Comparison.AtMost),
        Operation.IsMoreThan => Compare(sentence, Comparison.MoreThan),
        Operation.IsLessThan => Compare(sentence, Comparison.LessThan),
        Operation.IsKnown => Known(sentence),
        Operation.IsLit => OfItems(sentence, item => Lit(item, sentence)),
        Operation.IsDark => OfItems(sentence, item => item.Kind.Lights ? Not(Lit(item, sentence)) : Lit(item, sentence)),
        Operation.PositionIs => OfItems(sentence, item => Position(item, sentence.PhraseAt("position"))),
        Operation.PositionIsNot => OfItems(sentence, item => Not(Position(item, sentence.PhraseAt("position")))),
        Operation.Sign => Signs(sentence, negative: false),
        Operation.NoSign => Signs(sentence, negative: true),
        _ => null,
    };

    private static Condition.Not? Not(Condition? inner) => inner is null ? null : new Condition.Not(inner) { Span = inner.Span };

    private Condition? Shows(Sentence sentence, Comparison comparison) => OfItems(sentence, item =>
    {
        if (sentence.AmountAt("value") is not { Quantity.Unit: not null } value || !IsRead(item, sentence.Span))
        {
            return null;
        }

        Reading reading = item.Reading!;
        Quantity quantity = value.Quantity;
        if (quantity.Dimension != reading.Unit.Dimension)
        {
            resolver.Diagnostics.Add(CardMessages.WrongDimension(value.Span, item.Name, reading.Unit.Dimension.ToString(), quantity.Dimension.ToString()));
            return null;
        }

        double slack = 1e-9 * Math.Max(Math.Abs(reading.Maximum), Math.Abs(reading.Minimum));
        if (quantity.Si < reading.Minimum - slack || quantity.Si > reading.Maximum + slack)
        {
            string scale = $"{QuantityFormat.Text(reading.Minimum, reading.Unit)} to {QuantityFormat.Text(reading.Maximum, reading.Unit)}";
            resolver.Diagnostics.Add(CardMessages.OffScale(value.Span, item.Name, scale));
        }

        return new Condition.Shows(item, comparison, quantity.Si, quantity.Unit) { Span = sentence.Span };
    });

    private Condition? ScaleWord(Item item, Phrase? word)
    {
        if (word is null || !IsRead(item, word.Span))
        {
            return null;
        }

        if (resolver.Names.ScaleWordOf(item, word.Text) is not { } name)
        {
            resolver.Diagnostics.Add(CardMessages.UnknownScaleWord(word.Span, item.Name, word.Text, string.Join(", ", item.Reading!.Words.Keys)));
            return null;
        }

        (double from, double to) = item.Reading!.Words[name];
        return new Condition.ShowsWord(item, name, from, to) { Span = word.Span };
    }

    private Condition? Position(Item item, Phrase? position)
    {
        if (position is null)
        {
            return null;
        }

        if (resolver.Names.PositionOf(item, position.Text) is { } name)
        {
            return new Condition.PositionIs(item, name) { Span = position.Span };
        }

        if (resolver.Names.ScaleWordOf(item, position.Text) is not null)
        {
            return ScaleWord(item, position);
        }

        resolver.Diagnostics.Add(CardMessages.UnknownPosition(position.Span, item.Name, position.Text, string.Join(", ", item.Positions)));
        return null;
    }

    /// <summary>A lamp, or a control with a position that is called so.</summary>
    private Condition? Lit(Item item, Sentence sentence)
    {
        string word = resolver.Names.Language.Of(sentence.Operation)[0].Position!;
        if (item.Kind.Lights)
        {
            return new Condition.Lit(item) { Span = sentence.Span };
        }

        // A breaker may be called by the very word of a lamp that is dark: then it is its position.
        foreach (string called in sentence.Form?.Pattern.Parts is [.., PatternPart.Literal last] ? [word, last.Text] : new[] { word })
        {
            if (resolver.Names.PositionOf(item, called) is not null || resolver.Names.ScaleWordOf(item, called) is not null)
            {
                return Position(item, new(called, sentence.Span));
            }
        }

        resolver.Diagnostics.Add(CardMessages.NoLamp(sentence.Span, item.Name));
        return null;
    }

    private bool IsRead(Item item, Span at)
    {
        if (item.Reading is null)
        {
            resolver.Diagnostics.Add(CardMessages.NotRead(at, item.Name));
        }

        return item.Reading is not null;
    }

    private Condition? Compare(Sentence sentence, Comparison comparison)
    {
        if (sentence.Slots.GetValueOrDefault("calculation") is not Slot.Calculation calculation || sentence.AmountAt("value") is not { Quantity.Unit: not null } value)
        {
            return null;
        }

        ReadingExpression? expression = written.Read(calculation.Written, calculation.Span, resolver.Diagnostics);
        if (expression is null)
        {
            return null;
        }

        Quantity quantity = value.Quantity;
        if (quantity.Dimension != expression.Dimension)
        {
            resolver.Diagnostics.Add(CardMessages.WrongDimension(value.Span, calculation.Written, expression.Dimension.ToString(), quantity.Dimension.ToString()));
            return null;
        }

        Unit unit = expression.IsDifference ? quantity.Unit with { Offset = 0 } : quantity.Unit;
        return new Condition.Compare(expression, comparison, unit.ToSi(quantity.Value), unit) { Span = sentence.Span };
    }

    private Condition.Known? Known(Sentence sentence) =>
        sentence.Slots.GetValueOrDefault("calculation") is Slot.Calculation calculation && written.Read(calculation.Written, calculation.Span, resolver.Diagnostics) is { } expression
            ? new Condition.Known(expression) { Span = sentence.Span }
            : null;

    private Condition? Signs(Sentence sentence, bool negative)
    {
        if (sentence.PhraseAt("sign") is not { } phrase || resolver.Signs(phrase) is not { } signs)
        {
            return null;
        }

        ImmutableArray<Condition> each = [.. signs.Groups.Select(g => (Condition)new Condition.SignHolds(g[0]) { Span = sentence.Span })];
        Condition joined = Joined(each, sentence.Span, signs.Quantifier != Quantifier.Any);
        return negative ? Not(joined) : joined;
    }

    /// <summary>What holds for the items of the sentence: of each, of any, of the one within reach.</summary>
    private Condition? OfItems(Sentence sentence, Func<Item, Condition?> of)
    {
        if (sentence.PhraseAt("item") is not { } phrase || resolver.Items(phrase) is not { } items)
        {
            return null;
        }

        List<Condition> each = [];
        foreach (ImmutableArray<Item> group in items.Groups)
        {
            ReachCase?[] cases = [.. group.Select(i => of(i) is { } c ? new ReachCase(i, c with { Span = sentence.Span }) : null)];
            if (cases.Contains(null))
            {
                return null;
            }

            each.Add(cases.Length == 1 ? cases[0]!.Condition : new Condition.OneInReach([.. cases.OfType<ReachCase>()]) { Span = sentence.Span });
        }

        return Joined([.. each], sentence.Span, items.Quantifier != Quantifier.Any);
    }
}
