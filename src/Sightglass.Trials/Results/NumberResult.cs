using System.Collections.Immutable;
using Sightglass.World.Runs;

namespace Sightglass.Trials.Results;

/// <summary>What a trial came to on one road number.</summary>
/// <param name="Number">The road number.</param>
/// <param name="Done">Cases that ended well.</param>
/// <param name="Stopped">Cases that ended safely, not done.</param>
/// <param name="Failed">Cases that failed.</param>
/// <param name="Undecided">Cases that the numbers could not decide.</param>
public sealed record NumberResult(string Number, int Done, int Stopped, int Failed, int Undecided)
{
    /// <summary>Cases the card is meant for.</summary>
    public int Applicable => Done + Stopped + Failed + Undecided;

    internal static ImmutableArray<NumberResult> Of(ImmutableArray<string> numbers, IEnumerable<(string? Number, OutcomeKind Kind)> cases)
    {
        ILookup<string?, OutcomeKind> kinds = cases.ToLookup(c => c.Number, c => c.Kind);
        return [.. numbers.Select(n => new NumberResult(n, Count(n, OutcomeKind.Done), Count(n, OutcomeKind.Stopped), Count(n, OutcomeKind.Failed), Count(n, OutcomeKind.Undecided)))];

        int Count(string number, OutcomeKind kind) => kinds[number].Count(k => k == kind);
    }
}
