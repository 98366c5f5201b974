namespace Sightglass.World.Records;

/// <summary>Where a record goes on from.</summary>
/// <param name="Record">Name of the other record's file.</param>
/// <param name="At">Ticks since the start up to which it is repeated.</param>
public sealed record RecordOrigin(string Record, long At);
