using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A question about what the machine will do, which a group bets on before it is run. Which answer comes true is worked out, never written down.</summary>
public sealed record Bet(string Name, Span Span)
{
    /// <summary>What is asked.</summary>
    public required string Asks { get; init; }

    /// <summary>Where it starts; each of its values is to be fixed.</summary>
    public required string Situation { get; init; }

    /// <summary>Where the situation is named.</summary>
    public required Span SituationSpan { get; init; }

    /// <summary>The system that is drawn; null where the situation tells which it is about.</summary>
    public string? System { get; init; }

    /// <summary>What is done by the instructor's hand while it runs, in the order of time.</summary>
    public ImmutableArray<BetAct> Acts { get; init; } = [];

    /// <summary>Seconds.</summary>
    public required double RunsFor { get; init; }

    /// <summary>What the wall shows beside the machine: formulas of a quantity.</summary>
    public ImmutableArray<BetShow> Shows { get; init; } = [];

    /// <summary>In the order in which they are offered; that which comes true is the first whose condition holds at the end.</summary>
    public ImmutableArray<BetChoice> Answers { get; init; } = [];

    /// <summary>Why it is so.</summary>
    public string Because { get; init; } = "";

    /// <summary>What is to be taken home, in one sentence.</summary>
    public string Lesson { get; init; } = "";
}
