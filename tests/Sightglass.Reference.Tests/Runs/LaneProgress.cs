using System.Collections.Immutable;
using Sightglass.Basics.Time;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>How far one lane is in a reference problem.</summary>
internal sealed class LaneProgress(int number)
{
    private SimTime _every;

    public int Number { get; } = number;

    public int NextEvent { get; set; }

    /// <summary>The next sampling moment; never where none are wanted.</summary>
    public SimTime NextSample { get; private set; }

    public bool IsPeeking { get; set; }

    public bool IsDone { get; set; } = true;

    public List<ImmutableArray<double>> Samples { get; } = [];

    /// <summary>When a switch fired, s.</summary>
    public List<double> Firings { get; } = [];

    public void Start(SimTime every)
    {
        _every = every;
        NextEvent = 0;
        NextSample = every == SimTime.Zero ? SimTime.Never : SimTime.Zero;
        IsPeeking = IsDone = false;
        Samples.Clear();
        Firings.Clear();
    }

    public void Take(ImmutableArray<double> row)
    {
        Samples.Add(row);
        NextSample += _every;
        IsPeeking = false;
    }
}
