using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>What must be true in fact, seen by nobody, or what must come of numbers that were read: only in <c>Must never</c> and <c>Done when</c>.</summary>
public abstract record FactCondition
{
    private FactCondition()
    {
    }

    public required Span Span { get; init; }

    /// <summary>For what stands alone: the fact's name, or the sentence as written; else empty.</summary>
    public virtual string Name => "";

    public sealed record Holds(Fact Fact) : FactCondition
    {
        public override string Name => Fact.Name;
    }

    /// <summary>A comparison of numbers that were read, or whether they were.</summary>
    public sealed record Number(Condition Condition, string Written) : FactCondition
    {
        public override string Name => Written;

        public ReadingExpression Expression => Condition is Condition.Compare compare ? compare.Expression : ((Condition.Known)Condition).Expression;
    }

    public sealed record Not(FactCondition Inner) : FactCondition;

    public sealed record All(ImmutableArray<FactCondition> Parts) : FactCondition;

    public sealed record Any(ImmutableArray<FactCondition> Parts) : FactCondition;
}
