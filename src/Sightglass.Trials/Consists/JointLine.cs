using Sightglass.Book.Model;

namespace Sightglass.Trials.Consists;

/// <summary>A line between two vehicles.</summary>
/// <param name="Line">As ends name it.</param>
/// <param name="State">How it stands.</param>
public sealed record JointLine(string Line, LineState State)
{
    /// <summary>What joins it; null where nothing can.</summary>
    public Item? Coupling { get; init; }

    /// <summary>The vehicle that lacks it, or has it at its other end; null where both have it.</summary>
    public Vehicle? Lacks { get; init; }

    /// <summary>What the end of the vehicle ahead has for it; null for nothing.</summary>
    public Item? Ahead { get; init; }

    /// <summary>What the end of the vehicle behind has for it; null for nothing.</summary>
    public Item? Behind { get; init; }
}
