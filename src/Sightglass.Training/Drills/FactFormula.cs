using System.Collections.Immutable;
using Sightglass.Cards.Programs;

namespace Sightglass.Training.Drills;

/// <summary>What a card asks in fact, as a formula of the book.</summary>
/// <param name="Name">As a sheet says it.</param>
/// <param name="Formula">Of facts.</param>
internal sealed record FactFormula(string Name, string Formula)
{
    /// <summary>Everything that must hold together, each by itself; what comes of numbers that somebody read is no fact and is left out.</summary>
    public static ImmutableArray<FactFormula> Parts(FactCondition? condition) => condition switch
    {
        null => [],
        FactCondition.All all => [.. all.Parts.SelectMany(p => Parts(p))],
        _ => Of(condition) is { } one ? [one] : [],
    };

    /// <summary>Null where numbers that somebody read are in it.</summary>
    public static FactFormula? Of(FactCondition condition) => condition switch
    {
        FactCondition.Holds holds => new(holds.Fact.Name, holds.Fact.Name),
        FactCondition.Not { Inner: var inner } => Of(inner) is { } one ? new($"not so: {one.Name}", $"not ({one.Formula})") : null,
        FactCondition.All all => Joined(all.Parts, "and"),
        FactCondition.Any any => Joined(any.Parts, "or"),
        _ => null,
    };

    private static FactFormula? Joined(ImmutableArray<FactCondition> parts, string word)
    {
        FactFormula?[] all = [.. parts.Select(Of)];
        return all.Contains(null) ? null
            : new(string.Join($" {word} ", all.Select(p => p!.Name)), string.Join($" {word} ", all.Select(p => p!.Formula.Contains(" or ", StringComparison.Ordinal) ? $"({p.Formula})" : p.Formula)));
    }
}
