namespace Sightglass.World.Snapshots;

/// <summary>What a sentinel's margin was when last looked at.</summary>
public sealed record SentinelSnapshot(int Owner, double Last);
