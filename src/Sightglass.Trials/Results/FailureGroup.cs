using System.Collections.Immutable;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Results;

/// <summary>Failures of one mechanism at one step.</summary>
/// <param name="Mechanism">In words from the book.</param>
/// <param name="Step">Under way when it happened.</param>
/// <param name="Cases">Case indices from 0, ascending.</param>
public sealed record FailureGroup(string Mechanism, int Step, ImmutableArray<int> Cases)
{
    public static ImmutableArray<FailureGroup> Of(ImmutableArray<Outcome> outcomes) =>
    [
        .. outcomes.Select((o, i) => (o, i))
            .Where(c => c.o.Kind is OutcomeKind.Failed or OutcomeKind.Undecided)
            .GroupBy(c => (c.o.Mechanism, c.o.Step))
            .Select(g => new FailureGroup(g.Key.Mechanism, g.Key.Step, [.. g.Select(c => c.i)]))
            .OrderByDescending(g => g.Cases.Length)
            .ThenBy(g => g.Mechanism, StringComparer.Ordinal)
            .ThenBy(g => g.Step),
    ];
}
