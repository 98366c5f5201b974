using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Ladder;
using Sightglass.Drawing.Loads;
using Sightglass.World.Journal;

namespace Sightglass.Web.Live;

/// <summary>Everything that pages show of a live world at one moment. Immutable; everybody gets the same one.</summary>
public sealed record MachineSnapshot
{
    /// <summary>Grows with every change.</summary>
    public long Number { get; init; }

    public SimTime Now { get; init; }

    public Pace Pace { get; init; }

    /// <summary>Levels, flows, readings of the diagram, hidden truth included: pages without truth leave it out.</summary>
    public DiagramState Diagram { get => DiagramLook.Said(field); init; } = DiagramState.Still;

    /// <summary>Voltages, currents, contacts and lamps of the circuits, hidden truth included: pages without truth leave it out.</summary>
    public LadderState Circuit { get; init; } = LadderState.Still;

    /// <summary>What wheels carry, hidden truth included: pages without truth leave it out.</summary>
    public LoadState Loads { get; init; } = LoadState.Unknown;

    /// <summary>Control → the position it is in.</summary>
    public ImmutableSortedDictionary<string, string> Positions { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>In the order of <see cref="Sampler.Gauges"/>.</summary>
    public ImmutableArray<GaugeLook> Gauges { get; init; } = [];

    /// <summary>The last half hour, oldest first; its last point is not the present.</summary>
    public ImmutableArray<TracePoint> Trace { get; init; } = [];

    /// <summary>Pressures along each line of <see cref="Sampler.Along"/>, oldest first, the last one now.</summary>
    public ImmutableArray<ImmutableArray<AlongPoint>> Along { get; init; } = [];

    /// <summary>Oldest first.</summary>
    public ImmutableArray<JournalEntry> Journal { get; init; } = [];

    /// <summary>Faults that are there now.</summary>
    public ImmutableArray<PresentFault> Faults { get; init; } = [];

    /// <summary>World inputs (grade, load …), SI.</summary>
    public ImmutableSortedDictionary<string, double> Inputs { get; init; } = ImmutableSortedDictionary<string, double>.Empty;

    /// <summary>Why the numbers could not go on, or null.</summary>
    public string? Trouble { get; init; }
}
