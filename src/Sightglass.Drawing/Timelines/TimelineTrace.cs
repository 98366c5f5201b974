using System.Collections.Immutable;

namespace Sightglass.Drawing.Timelines;

/// <summary>A number over time: what was so, dashed, and where somebody could read it what they read, solid.</summary>
/// <param name="Truth">Seconds and value.</param>
/// <param name="Shown">Stretches in which it could be read; each of one point or more.</param>
/// <param name="Unit">Written behind the numbers.</param>
/// <param name="Decimals">Of the numbers at the ends of the scale.</param>
public sealed record TimelineTrace(ImmutableArray<(double X, double Y)> Truth, ImmutableArray<ImmutableArray<(double X, double Y)>> Shown, string Unit, int Decimals)
{
    /// <summary>Values at the foot and the head of the lane; null: the least and the greatest.</summary>
    public (double From, double To)? Scale { get; init; }

    /// <summary>Said of the last value, beside it; empty for nothing.</summary>
    public string End { get; init; } = "";
}
