using System.Collections.Immutable;

namespace Sightglass.World.Snapshots;

/// <summary>Somebody.</summary>
public sealed record PersonSnapshot(string Role, int Place, int WalkingTo, double Walked, ulong Protections, ImmutableArray<string> Permissions);
