using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Sweep;

/// <summary>What is tried: one card, from one situation, on the machines of which a case draws one.</summary>
/// <param name="Number">The road numbers; no words for a book without.</param>
/// <param name="Machines">Each once, at least one; the ranges of the situation are the same on all of them.</param>
/// <param name="MachineOf">By the place of the road number among its words: which machine it is.</param>
/// <param name="Times">How long people take.</param>
public sealed record TrialSetup(DrawnRange Number, ImmutableArray<TrialMachine> Machines, ImmutableArray<int> MachineOf, HumanTimes Times)
{
    /// <summary>Error allowed in a step as a share of each store's span.</summary>
    public double RelativeTolerance { get; init; } = 1e-5;

    public ClassBook Book => Machines[0].Plan.Book;

    public Situation Situation => Machines[0].Start.Situation;

    /// <summary>Everything drawn, the road number first; also what does not vary.</summary>
    public ImmutableArray<DrawnRange> Ranges => [Number, .. Machines[0].Start.Ranges];

    /// <summary>The road number of a case; null for a book without.</summary>
    public string? NumberOf(CaseDraws draws) => Number.Words.IsEmpty ? null : Number.Say(draws);

    /// <summary>The place of a case's machine among <see cref="Machines"/>.</summary>
    public int IndexOf(CaseDraws draws) => Number.Words.IsEmpty ? 0 : MachineOf[(int)Number.Value(draws)];

    /// <summary>
    /// The draw at which a range is as ordinary as can be: the middle of numbers, the first of words; of road numbers the one that differs least
    /// from the class.
    /// </summary>
    public double Ordinary(DrawnRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        int word = range.Order == RoadNumberDraw.Order ? Plainest() : 0;
        return range.Words.IsEmpty ? 0.5 : word == 0 ? 0 : (word + 0.5) / range.Words.Length;
    }

    private int Plainest() => Enumerable.Range(0, Number.Words.Length).MinBy(i => Book.RoadNumbers[Number.Words[i]].Modifications.Length);
}
