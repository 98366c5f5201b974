using System.Collections.Immutable;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Results;

/// <summary>Failures of one mechanism at one step.</summary>
/// <param name="Mechanism">In words from the book.</param>
/// <param name="Step">Under way when it happened.</param>
/// <param name="Cases">Case indices from 0, ascending.</param>
/// <param name="Numbers">The road numbers on which it happened, in the order of the setup's; empty for a book without.</param>
public sealed record FailureGroup(string Mechanism, int Step, ImmutableArray<int> Cases, ImmutableArray<string> Numbers)
{
    /// <param name="outcomes">By case.</param>
    /// <param name="numbers">All road numbers, in order.</param>
    /// <param name="numberOf">Of a case, by its index; null for a book without.</param>
    public static ImmutableArray<FailureGroup> Of(ImmutableArray<Outcome> outcomes, ImmutableArray<string> numbers, Func<int, string?> numberOf) =>
    [
        .. outcomes.Select((o, i) => (o, i))
            .Where(c => c.o.Kind is OutcomeKind.Failed or OutcomeKind.Undecided)
            .GroupBy(c => (c.o.Mechanism, c.o.Step))
            .Select(g => new FailureGroup(g.Key.Mechanism, g.Key.Step, [.. g.Select(c => c.i)], [.. numbers.Intersect(g.Select(c => numberOf(c.i) ?? ""))]))
            .OrderByDescending(g => g.Cases.Length)
            .ThenBy(g => g.Mechanism, StringComparer.Ordinal)
            .ThenBy(g => g.Step),
    ];
}
