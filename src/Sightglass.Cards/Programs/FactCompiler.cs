using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>Resolves the facts, and the numbers read by steps, of Must never and Done when.</summary>
internal sealed class FactCompiler(NameResolver resolver, WrittenNames written)
{
    private readonly ConditionCompiler _numbers = new(resolver, written);

    /// <summary>Everything named, whatever joins it: none of it may come true.</summary>
    public ImmutableArray<FactCondition> List(ConditionPhrase? phrase)
    {
        ImmutableArray<FactCondition>.Builder facts = ImmutableArray.CreateBuilder<FactCondition>();
        foreach (Sentence sentence in phrase?.Sentences() ?? [])
        {
            if (sentence.PhraseAt("fact") is { } name && resolver.Facts(name) is { } found)
            {
                facts.AddRange(found.Groups.Select(g => new FactCondition.Holds(g[0]) { Span = sentence.Span }));
            }
            else if (sentence.Slots.ContainsKey("calculation") && Compile(sentence) is { } number)
            {
                facts.Add(number);
            }
        }

        return [.. facts.DistinctBy(f => f.Name)];
    }

    public FactCondition? Compile(ConditionPhrase? phrase) => phrase switch
    {
        ConditionPhrase.One one => Compile(one.Sentence),
        ConditionPhrase.Any any => Join(any.Parts, any.Span, all: false),
        ConditionPhrase.All all => Join(all.Parts, all.Span, all: true),
        ConditionPhrase.Several several => Join(several.Parts, several.Span, all: true),
        _ => null,
    };

    private FactCondition? Join(ImmutableArray<ConditionPhrase> parts, Span span, bool all)
    {
        FactCondition?[] compiled = [.. parts.Select(Compile)];
        return compiled.Contains(null) ? null : Joined([.. compiled.OfType<FactCondition>()], span, all);
    }

    private static FactCondition Joined(ImmutableArray<FactCondition> parts, Span span, bool all)
    {
        if (parts.Length == 1)
        {
            return parts[0];
        }

        return all ? new FactCondition.All(parts) { Span = span } : new FactCondition.Any(parts) { Span = span };
    }

    private FactCondition? Compile(Sentence sentence)
    {
        if (sentence.Slots.ContainsKey("calculation"))
        {
            return _numbers.Compile(sentence) is { } number ? new FactCondition.Number(number, WordList.Squeeze(sentence.Span.Text)) { Span = sentence.Span } : null;
        }

        if (sentence.PhraseAt("fact") is not { } phrase || resolver.Facts(phrase) is not { } found)
        {
            return null;
        }

        ImmutableArray<FactCondition> each = [.. found.Groups.Select(g => (FactCondition)new FactCondition.Holds(g[0]) { Span = sentence.Span })];
        FactCondition joined = Joined(each, sentence.Span, found.Quantifier != Quantifier.Any);
        return sentence.Operation == Operation.NotFact ? new FactCondition.Not(joined) { Span = sentence.Span } : joined;
    }
}
