using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What a class says of making up a train: in which order its lines are coupled, how cabs are set up, and what the leading one commands.</summary>
/// <param name="Span">Where it is described.</param>
public sealed record MakingUp(Span Span)
{
    public string Text { get; init; } = "";

    /// <summary>In the order in which they are coupled; what is not named comes last, by name.</summary>
    public ImmutableArray<LineUse> Lines { get; init; } = [];

    /// <summary>How the leading machine is set up.</summary>
    public ImmutableArray<Setting> Lead { get; init; } = [];

    /// <summary>How a machine is set up that another one leads.</summary>
    public ImmutableArray<Setting> Trail { get; init; } = [];

    /// <summary>How a machine is set up that is hauled dead.</summary>
    public ImmutableArray<Setting> Dead { get; init; } = [];

    /// <summary>What is done in the leading cab to set the brakes of the train in full; null where nothing is said.</summary>
    public Setting? Brakes { get; init; }

    /// <summary>Seconds in which they are set.</summary>
    public double BrakesWithin { get; init; } = 40;

    /// <summary>In the order of the author's file.</summary>
    public ImmutableArray<TrainCommand> Commands { get; init; } = [];
}
