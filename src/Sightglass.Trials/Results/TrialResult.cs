using System.Collections.Immutable;
using Sightglass.Basics.Statistics;
using Sightglass.Trials.Sweep;
using Sightglass.World.Runs;

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
        Groups = FailureGroup.Of(outcomes);
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

    /// <summary>True when every applicable case ended well or safely.</summary>
    public bool Passes => Failed == 0 && Undecided == 0 && Applicable > 0;

    /// <summary>
    /// Share of applicable cases that end well or safely, from below with 95 % confidence (Clopper–Pearson, one-sided; undecided cases
    /// count as bad). Only for a number of cases settled beforehand: a trial that was stopped early has none.
    /// </summary>
    public double? LowerBound => NotRun > 0 || Applicable == 0 ? null : BinomialBounds.Lower(Done + Stopped, Applicable, Confidence);

    private int Count(OutcomeKind kind) => Outcomes.Count(o => o.Kind == kind);
}
