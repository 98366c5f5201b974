using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>Something that is in one state after the other: a control in its positions, a condition that holds or not.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Changes">Seconds and the state from then on, ascending.</param>
/// <param name="IsTruth">Known to the instructor alone.</param>
public sealed record TimeBand(string Name, ImmutableArray<(double X, string Words)> Changes, bool IsTruth = false)
{
    /// <summary>The state that is drawn heavy; null for none.</summary>
    public string? Heavy { get; init; }
}
