using System.Collections.Immutable;

namespace Sightglass.World.Snapshots;

/// <summary>Somebody. Within which place and what is ahead on the way; what is left out stands where the person stands.</summary>
public sealed record PersonSnapshot(string Role, int Place, int WalkingTo, double Walked, ulong Protections, ImmutableArray<string> Permissions, int? Within = null, int Ahead = -1, WorldAction? Deed = null, bool IsHeard = false)
{
    /// <summary>Where they want to go beyond something that is shut; −1: nowhere.</summary>
    public int Onward { get; init; } = -1;

    /// <summary>Where the walk began; left out where they stand.</summary>
    public int? Left { get; init; }

    /// <summary>To which place they found no way; −1: none.</summary>
    public int Missed { get; init; } = -1;

    /// <summary>Items that they found shut.</summary>
    public ImmutableArray<string> Shut { get; init; } = [];
}
