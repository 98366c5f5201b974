using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>What must be true in fact, seen by nobody: only in <c>Done when</c>.</summary>
public abstract record FactCondition
{
    private FactCondition()
    {
    }

    public required Span Span { get; init; }

    public sealed record Holds(Fact Fact) : FactCondition;

    public sealed record Not(FactCondition Inner) : FactCondition;

    public sealed record All(ImmutableArray<FactCondition> Parts) : FactCondition;

    public sealed record Any(ImmutableArray<FactCondition> Parts) : FactCondition;
}
