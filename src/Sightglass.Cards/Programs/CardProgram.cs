using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>A card made ready to run: every name resolved, every jump an index, no text work left.</summary>
public sealed record CardProgram
{
    public required string Title { get; init; }

    /// <summary>What the card's letters stand for in this run.</summary>
    public ImmutableArray<Binding> Bindings { get; init; } = [];

    /// <summary>Who may work by it; the first holds the card unless the situation says otherwise.</summary>
    public ImmutableArray<Role> For { get; init; } = [];

    /// <summary>Who must hear of it.</summary>
    public ImmutableArray<Role> Told { get; init; } = [];

    /// <summary>Tools and the like, as written.</summary>
    public ImmutableArray<string> Needs { get; init; } = [];

    /// <summary>The card is not applicable where this does not hold at its start; null: always applicable.</summary>
    public Condition? UseWhen { get; init; }

    /// <summary>Any of these coming true at any moment of the run is a failure.</summary>
    public ImmutableArray<FactCondition> MustNever { get; init; } = [];

    /// <summary>Judged from <see cref="CardOp.Done"/> on; null: nothing is asked.</summary>
    public FactCondition? DoneWhen { get; init; }

    /// <summary>Seconds after the last step for which <see cref="DoneWhen"/> must hold without a break.</summary>
    public double StaysSoSeconds { get; init; }

    public ImmutableArray<CardOp> Ops { get; init; } = [];

    /// <summary>Names of numbers written down by <see cref="CardOp.Read"/>, by index.</summary>
    public ImmutableArray<WrittenName> Names { get; init; } = [];

    /// <summary>How many people work at the same time somewhere in it; 0 where one step follows the other.</summary>
    public int MostAtOnce => Ops.OfType<CardOp.Together>().Select(t => t.Branches.Length).DefaultIfEmpty(0).Max();

    /// <summary>How many counters <see cref="CardOp.Repeat"/> uses.</summary>
    public int Counters { get; init; }
}
