using System.Collections.Immutable;

namespace Sightglass.Drawing.Trains;

/// <summary>A value of each vehicle of a train.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Values">One for each vehicle; empty for nothing. A value that is not as it should be is marked.</param>
public sealed record TrainMapRow(string Label, ImmutableArray<(string Value, bool IsBad)> Values);
