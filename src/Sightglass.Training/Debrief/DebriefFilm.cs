using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Training.Drills;

namespace Sightglass.Training.Debrief;

/// <summary>A run of a drill kept for looking: moments of it, and what came of it.</summary>
/// <param name="Drill">On its machine.</param>
/// <param name="Signals">The numbers of the truth that were followed.</param>
/// <param name="Moments">In the order of time; at least one.</param>
/// <param name="Result">The same as of a run without looking.</param>
/// <param name="End">The last moment.</param>
public sealed record DebriefFilm(BoundDrill Drill, ImmutableArray<DebriefSignal> Signals, ImmutableArray<DebriefMoment> Moments, DrillResult Result, SimTime End)
{
    /// <summary>At most so many moments are kept of a run.</summary>
    public const int MostMoments = 600;

    /// <summary>Share of the time from which an instrument that was read counts in full.</summary>
    private const double EnoughRead = 0.1;

    /// <summary>So many times more than what nobody read.</summary>
    private const double MostForReading = 7;

    /// <summary>Ticks after something has come about in which its moment is kept.</summary>
    private const int JustAfter = 2;

    /// <summary>What it earned, and what decided it.</summary>
    public Turning Turning { get; } = Turning.Of(Drill, Result);

    /// <summary>The kept moment at a time, or the last before it. What comes about at a time shows just after it, and is meant by it.</summary>
    public DebriefMoment At(SimTime at) => Moments[IndexAt(new(at.Ticks + JustAfter))];

    /// <summary>The number of that moment.</summary>
    public int IndexAt(SimTime at)
    {
        int low = 0, high = Moments.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            (low, high) = Moments[middle].At <= at ? (middle, high) : (low, middle - 1);
        }

        return low;
    }

    /// <summary>The signals that tell most of this run, in the order of <see cref="Signals"/>: what moved; before all instruments that the trainee read for long, most of all those that misled.</summary>
    /// <param name="most">How many.</param>
    public ImmutableArray<int> Telling(int most)
    {
        List<int> chosen = [];
        foreach (int number in Enumerable.Range(0, Signals.Length).Select(i => (Number: i, Worth: Worth(i))).Where(s => s.Worth > 0).OrderByDescending(s => s.Worth).Select(s => s.Number))
        {
            // Two glasses at one tank tell the same: the one that was read is enough.
            if (chosen.Count < most && !chosen.Any(c => IsSame(c, number)))
            {
                chosen.Add(number);
            }
        }

        return [.. chosen.Order()];
    }

    /// <summary>How far it went, as a share of the largest it was, times what makes it worth looking at: that it was read, for how long, and whether it misled; a flow that jumps with every handle is worth less.</summary>
    private double Worth(int number)
    {
        DebriefSignal signal = Signals[number];
        double[] values = [.. Moments.Select(m => m.Truth[number]).Where(double.IsFinite)];
        double span = values.Length == 0 ? 0 : values.Max() - values.Min();
        if (span <= (signal.Resolution ?? signal.Unit.Factor * 0.5))
        {
            return 0;
        }

        double share = span / Math.Max(values.Max(v => Math.Abs(v)), span);
        double read = Moments.Count(m => m.Shown(signal) is not null) / (double)Moments.Length;
        double weight = signal.IsRate ? 0.25 : 1 + (MostForReading * Math.Min(1, read / EnoughRead));
        return share * weight * (Moments.Any(m => m.Shown(signal) is { } shown && signal.Misleads(shown, m.Truth[number])) ? 2 : 1);
    }

    private bool IsSame(int one, int other) => Signals[one].StandsAt is { } at ? at == Signals[other].StandsAt : Signals[one].Unit == Signals[other].Unit && Moments.All(m => Math.Abs(m.Truth[one] - m.Truth[other]) <= 1e-3 * Math.Abs(m.Truth[one]) || !double.IsFinite(m.Truth[one]));
}
