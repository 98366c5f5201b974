using System.Collections.Immutable;

namespace Sightglass.Drawing.Charts;

/// <summary>How often values occur.</summary>
/// <param name="Title">What the values are.</param>
/// <param name="Values">All of them; order does not matter.</param>
/// <param name="Unit">Written behind the numbers.</param>
public sealed record Histogram(string Title, ImmutableArray<double> Values, string Unit = "")
{
    /// <summary>Ends of the scale; by default round numbers round the values.</summary>
    public (double From, double To)? Across { get; init; }

    /// <summary>Default 60.</summary>
    public int Bins { get; init; } = 60;

    public double Width { get; init; } = 420;

    public double Height { get; init; } = 112;

    /// <summary>Counts of the bins over a stretch; what lies outside counts to the outermost bins.</summary>
    public ImmutableArray<int> Counts(double from, double to)
    {
        int[] counts = new int[Bins];
        foreach (double value in Values.Where(double.IsFinite))
        {
            counts[Math.Clamp((int)((value - from) / (to - from) * Bins), 0, Bins - 1)]++;
        }

        return [.. counts];
    }
}
