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

    /// <summary>What it earned, and what decided it.</summary>
    public Turning Turning { get; } = Turning.Of(Drill, Result);

    /// <summary>The kept moment at a time, or the last before it.</summary>
    public DebriefMoment At(SimTime at) => Moments[IndexAt(at)];

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

    /// <summary>The signals that tell most of this run: what is judged and moves, and instruments that the trainee read, in the order of <see cref="Signals"/>.</summary>
    /// <param name="most">How many.</param>
    public ImmutableArray<int> Telling(int most)
    {
        var moved = Enumerable.Range(0, Signals.Length).Select(i => (Number: i, Worth: Worth(i))).Where(s => s.Worth > 0).ToArray();
        return [.. moved.OrderByDescending(s => s.Worth).Take(most).Select(s => s.Number).Order()];
    }

    /// <summary>How far it went, as a share of the largest it was; half as much again where an instrument shows it, twice where that was read by the trainee and misled.</summary>
    private double Worth(int number)
    {
        DebriefSignal signal = Signals[number];
        double[] values = [.. Moments.Select(m => m.Truth[number]).Where(double.IsFinite)];
        if (values.Length == 0)
        {
            return 0;
        }

        double span = values.Max() - values.Min();
        double least = signal.Resolution ?? signal.Unit.Factor * 0.5;
        if (span < least)
        {
            return 0;
        }

        double share = span / Math.Max(values.Max(v => Math.Abs(v)), span);
        return share * (Moments.Any(m => m.Shown(signal) is { } shown && signal.Misleads(shown, m.Truth[number])) ? 2 : Moments.Any(m => m.Shown(signal) is not null) ? 1.5 : 1);
    }
}
