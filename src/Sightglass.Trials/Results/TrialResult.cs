using System.Collections.Immutable;
using Sightglass.Basics.Statistics;
using Sightglass.Trials.Maps;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Results;

/// <summary>What a trial came to.</summary>
public sealed class TrialResult
{
    /// <summary>Confidence of the bounds.</summary>
    public const double Confidence = 0.95;

    public TrialResult(TrialSetup setup, SweepOptions options, ImmutableArray<Outcome> outcomes)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        (Setup, Seed, FirstCase, Outcomes) = (setup, options.Seed, options.FirstCase, outcomes);
        Done = Count(OutcomeKind.Done);
        Stopped = Count(OutcomeKind.Stopped);
        Failed = Count(OutcomeKind.Failed);
        NotApplicable = Count(OutcomeKind.NotApplicable);
        Undecided = Count(OutcomeKind.Undecided);
        NotRun = Count(OutcomeKind.Running);
        Groups = FailureGroup.Of(outcomes, setup.Number.Words, NumberOf);
        ByNumber = NumberResult.Of(setup.Number.Words, outcomes.Select((o, i) => (NumberOf(i), o.Kind)));
        Ranking = FactorRanking.Of(this);
    }

    public TrialSetup Setup { get; }

    public ulong Seed { get; }

    public int FirstCase { get; }

    /// <summary>By case, from the first.</summary>
    public ImmutableArray<Outcome> Outcomes { get; }

    public int Done { get; }

    public int Stopped { get; }

    public int Failed { get; }

    public int NotApplicable { get; }

    public int Undecided { get; }

    /// <summary>Cases that were not reached.</summary>
    public int NotRun { get; }

    /// <summary>Cases the card is meant for: everything run but those it is not applicable to.</summary>
    public int Applicable => Done + Stopped + Failed + Undecided;

    /// <summary>Failures by mechanism, most first.</summary>
    public ImmutableArray<FailureGroup> Groups { get; }

    /// <summary>Counts of each road number of which a case could be, in their order; empty for a book without.</summary>
    public ImmutableArray<NumberResult> ByNumber { get; }

    /// <summary>What was drawn, by how much of whether a case fails it explains alone; most first.</summary>
    public ImmutableArray<RankedFactor> Ranking { get; }

    /// <summary>True when every applicable case ended well or safely.</summary>
    public bool Passes => Failed == 0 && Undecided == 0 && Applicable > 0;

    /// <summary>Whether some cases were not run: how many there would be was not settled beforehand then.</summary>
    public bool StoppedEarly => NotRun > 0;

    /// <summary>
    /// Share of applicable cases that end well or safely, from below with 95 % confidence; undecided cases count as bad. Exact for a number of cases settled
    /// beforehand (Clopper–Pearson, one-sided); for a trial that was stopped early the bound that holds whenever one stops. Null where the card was for none of the cases.
    /// </summary>
    public double? LowerBound =>
        Applicable == 0 ? null
        : StoppedEarly ? AnytimeBound.Lower(Done + Stopped, Applicable, Confidence)
        : BinomialBounds.Lower(Done + Stopped, Applicable, Confidence);

    /// <summary>What a case drew.</summary>
    /// <param name="index">Of its outcome.</param>
    public CaseDraws DrawsOf(int index) => new(Seed, (ulong)(FirstCase + index));

    /// <summary>The road number of a case; null for a book without.</summary>
    /// <param name="index">Of its outcome.</param>
    public string? NumberOf(int index) => Setup.NumberOf(DrawsOf(index));

    private int Count(OutcomeKind kind) => Outcomes.Count(o => o.Kind == kind);
}
