using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A line as it is coupled when a train is made up.</summary>
/// <param name="Line">As ends name it under <c>joins</c>.</param>
/// <param name="Span">Where it is named.</param>
public sealed record LineUse(string Line, Span Span)
{
    /// <summary>Whether it goes from machine to machine alone; otherwise to every vehicle that has it.</summary>
    public bool BetweenMachines { get; init; }

    /// <summary>Whether a train must not leave while a vehicle of those that it goes to is not reached by it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>What a vehicle lacks that it does not reach; empty where nothing is said.</summary>
    public string Lost { get; init; } = "";
}
