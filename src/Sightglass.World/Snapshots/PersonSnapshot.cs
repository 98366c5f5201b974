using System.Collections.Immutable;

namespace Sightglass.World.Snapshots;

/// <summary>Somebody. Within which place and what is ahead on the way; what is left out stands where the person stands.</summary>
public sealed record PersonSnapshot(string Role, int Place, int WalkingTo, double Walked, ulong Protections, ImmutableArray<string> Permissions, int? Within = null, int Ahead = -1, WorldAction? Deed = null, bool IsHeard = false);
