using System.Collections.Immutable;

namespace Sightglass.Trials.Recordings;

/// <summary>A row of a recording beside the machine that began with it; by comparison, SI or numbers of words.</summary>
/// <param name="Row">Of the table.</param>
/// <param name="Recorded">Not a number where nothing was recorded.</param>
/// <param name="Machine">What the machine has some seconds after its start.</param>
/// <param name="Trouble">Why the machine could not be run; null where it could.</param>
public sealed record ComparedRow(int Row, ImmutableArray<double> Recorded, ImmutableArray<double> Machine, string? Trouble);
