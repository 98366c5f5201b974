using System.Collections.Immutable;

namespace Sightglass.World.Snapshots;

/// <summary>One network of a world.</summary>
/// <param name="Committed">Ticks of the committed state.</param>
/// <param name="StepSize">Ticks with which the next attempt begins.</param>
/// <param name="Steps">Accepted so far.</param>
/// <param name="Amounts">By name, in order.</param>
public sealed record NetworkSnapshot(long Committed, long StepSize, long Steps, ImmutableArray<KeyValuePair<string, double>> Amounts);
